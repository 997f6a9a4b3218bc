import { placardPsi } from '@bayledger/ledger/questions/gates'
import type { OrderState } from '@bayledger/ledger/state'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { type ReactNode, useState } from 'react'
import { Button } from '../../../ui/button.tsx'
import { Figure } from '../../../ui/figure.tsx'
import { numberFrom } from '../../../ui/number-text.ts'
import { RowForm } from '../form/row-form.tsx'
import { GaugeInHand } from '../instruments/gauge-in-hand.tsx'
import { gaugeHint, gaugeUsed } from '../instruments/gauge-words.ts'
import { useRecord } from '../record/use-record.ts'
import { NotPossibleForm } from './not-possible-form.tsx'
import { highestTirePsi } from './pressure-bounds.ts'

type GaugeFormProps = {
  state: OrderState
  wheel: WheelPosition
  tabs: ReactNode
  /** What comes up when this is recorded: "right front". */
  nextWords: string | null
  onDone: () => void
}

/** One tire's gauge pressure as received. The last decimal records it and brings up the next tire on the same keys. */
export function GaugeForm({ state, wheel, tabs, nextWords, onDone }: GaugeFormProps) {
  const { record, busy, problem } = useRecord(state.orderId)
  const [cannot, setCannot] = useState(false)
  const label = placardPsi(state, wheel)
  const name = wheelNames[wheel]
  if (cannot)
    return (
      <NotPossibleForm
        state={state}
        wheel={wheel}
        field="gauge"
        title={`Why can the ${name} tire not be gauged?`}
        reasons={['valve seized', 'cap stuck', 'valve out of reach', 'tire missing', 'locked away']}
        onBack={() => setCannot(false)}
        onDone={() => {
          setCannot(false)
          onDone()
        }}
      />
    )
  return (
    <GaugeInHand>
      {(gauge, change) => (
        <RowForm
          draftKey={`${state.orderId}/gauge/${wheel}`}
          title={`Gauge the ${name} tire`}
          beside={tabs}
          figure={() =>
            label === null ? (
              <span className="step-source">The sheet names no pressure for this tire.</span>
            ) : (
              <>
                <Figure value={label} unit="psi" size="large" />
                <span className="step-source">door label, cold</span>
              </>
            )
          }
          rows={() => [
            {
              kind: 'number',
              key: 'pressure',
              label: `Gauge, ${name}`,
              unit: 'psi',
              low: 0,
              high: highestTirePsi,
              step: 0.5,
              hint: gaugeHint(gauge),
            },
          ]}
          recordsItself
          recordWord={nextWords === null ? 'Record' : `Record · next ${nextWords}`}
          busy={busy}
          problem={problem}
          onRecord={async (values, form) => {
            const pressure = numberFrom(values.pressure ?? '')
            if (pressure === null) return false
            const taken = await record(
              'wheel.checked',
              {
                phase: 'arrival',
                stepKey: null,
                wheel,
                mounted: null,
                gauge: { pressure: { value: pressure, unit: 'psi' }, instrument: gaugeUsed(gauge) },
                sensor: null,
                notPossible: [],
              },
              `${wheel} gauge, ${pressure.toFixed(1)} psi`,
              form,
            )
            if (taken) onDone()
            return taken
          }}
        >
          <div className="row">
            {change}
            <Button onClick={() => setCannot(true)}>Cannot be gauged</Button>
          </div>
        </RowForm>
      )}
    </GaugeInHand>
  )
}
