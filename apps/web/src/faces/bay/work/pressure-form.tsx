import { pressureTargetFor } from '@bayledger/ledger/questions/pressure-target'
import type { OrderState } from '@bayledger/ledger/state'
import { judgeAsLeft, usualAfterSetLimits } from '@bayledger/reckoning/pressure/after-set'
import type { Surroundings } from '@bayledger/reckoning/sheet'
import { inKilopascals } from '@bayledger/reckoning/units/pressure-units'
import { Figure } from '../../../ui/figure.tsx'
import { numberFrom } from '../../../ui/number-text.ts'
import { fahrenheitOf, tiresOptions } from '../arrival/temperatures.ts'
import type { Row, RowValues } from '../form/rows.ts'
import { StepScreen } from '../form/step-screen.tsx'
import { GaugeInHand } from '../instruments/gauge-in-hand.tsx'
import { gaugeUsed } from '../instruments/gauge-words.ts'
import { stepTitle } from './step-words.ts'
import type { WheelFormProps } from './work-form.ts'
import { WorkRows } from './work-rows.tsx'

/** The day's target for this tire, from the temperatures as they are now, and what it was left at. */
export function PressureForm(props: WheelFormProps) {
  const { state, step, wheel } = props
  const before = latestSurroundings(state)
  if (before === null)
    return (
      <StepScreen
        title={stepTitle(step)}
        how="The temperatures were withdrawn. Set this step aside or have them recorded again before any pressure is set."
      />
    )
  const targetOf = (values: RowValues) => pressureTargetFor(state, wheel, surroundingsOf(values, before))
  return (
    <GaugeInHand>
      {(gauge, change) => (
        <WorkRows
          {...props}
          kind="pressure.set"
          beside={change}
          rows={() => rows}
          blank={{
            tires: before.tires,
            outdoor: fahrenheitOf(before.outdoor),
            ...(before.tire ? { tire: fahrenheitOf(before.tire) } : { tire: null }),
          }}
          how=""
          figure={(values) => {
            const target = targetOf(values)
            return (
              <>
                {target.ok ? <Figure value={target.psi.toFixed(1)} unit="psi" size="step" /> : null}
                <span className="step-source">{target.says}</span>
              </>
            )
          }}
          recordWord="Record as left"
          whyNot={(values) => {
            const target = targetOf(values)
            const asLeft = numberFrom(values.asLeft ?? '')
            if (!target.ok) return target.says
            if (asLeft === null) return undefined
            return judgeAsLeft(inPsi(target.psi), inPsi(asLeft)) === 'on-target'
              ? undefined
              : `Set ${target.psi.toFixed(1)} psi, at most ${usualAfterSetLimits.overPsi} over, and gauge again.`
          }}
          payload={(values) => {
            const target = targetOf(values)
            const asLeft = numberFrom(values.asLeft ?? '')
            if (!target.ok || asLeft === null) return null
            const { psi, placardPsi, quality, capped } = target
            return {
              stepKey: step.stepKey,
              wheel,
              target: { psi, placardPsi, quality, capped },
              asLeft: { value: asLeft, unit: 'psi' },
              instrument: gaugeUsed(gauge),
              surroundings: surroundingsOf(values, before),
            }
          }}
        />
      )}
    </GaugeInHand>
  )
}

const inPsi = (value: number) => inKilopascals({ value, unit: 'psi' })

const temperature = { kind: 'number', unit: '°F', signed: true, limits: { whole: 3, decimals: 1 } } as const

const rows: readonly Row[] = [
  { kind: 'number', key: 'asLeft', label: 'As left', unit: 'psi', low: 0, high: 150, step: 0.5 },
  { ...temperature, key: 'tire', label: 'Air in the tire', low: -60, high: 250, optional: 'not read' },
  { kind: 'choice', key: 'tires', label: 'The tires are', options: tiresOptions },
  { ...temperature, key: 'outdoor', label: 'Outdoors', low: -60, high: 130 },
]

/** As the last tire was set, else as noted on arrival. */
const latestSurroundings = (state: OrderState): Surroundings | null => {
  const set = Object.values(state.work)
    .flatMap((work) => (work.pressure ? [work.pressure] : []))
    .sort((one, other) => other.written.seq - one.written.seq)[0]
  const noted = state.surroundings
  return set && set.written.seq > (noted?.written.seq ?? 0)
    ? set.surroundings
    : (noted?.surroundings ?? set?.surroundings ?? null)
}

const surroundingsOf = (values: RowValues, before: Surroundings): Surroundings => {
  const outdoor = numberFrom(values.outdoor ?? '')
  const tire = numberFrom(values.tire ?? '')
  return {
    ...before,
    outdoor: outdoor === null ? before.outdoor : { value: outdoor, unit: 'F' },
    tires: tiresOptions.find(({ value }) => value === values.tires)?.value ?? before.tires,
    tire: tire === null ? null : { value: tire, unit: 'F' },
  }
}
