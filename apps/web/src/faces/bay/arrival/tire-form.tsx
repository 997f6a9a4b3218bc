import type { OrderState } from '@bayledger/ledger/state'
import { tiresOf } from '@bayledger/reckoning/sheet'
import type { CalendarDay } from '@bayledger/reckoning/units/calendar-day'
import { axleOf, type WheelPosition } from '@bayledger/reckoning/wheels'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { type ReactNode, useState } from 'react'
import { draftEntry, type WrittenDraft } from '../../../features/ledger/draft-entry.ts'
import { Button } from '../../../ui/button.tsx'
import type { RowValues } from '../../../ui/rows/rows.ts'
import { RowForm } from '../form/row-form.tsx'
import { useRecord } from '../record/use-record.ts'
import { useCalendarDay } from '../session/today.ts'
import { NotPossibleForm } from './not-possible-form.tsx'
import { lookRows, partRows, tireInspectedOf } from './tire-rows.ts'
import { acrossFault } from './wear-rows.ts'

type TireFormProps = {
  state: OrderState
  wheel: WheelPosition
  tabs: ReactNode
  /** One part is requested by name; the rest may be left out. */
  row?: string | undefined
  nextWords: string | null
  onDone: () => void
}

/** Tire, stem, nuts and studs as they came. The first look is two presses; every part has its own row on request. */
export function TireForm({ state, wheel, tabs, row, nextWords, onDone }: TireFormProps) {
  const { recordAll, busy, problem } = useRecord(state.orderId)
  const today = useCalendarDay()
  const [other, setOther] = useState<'cannot' | 'parts' | null>(null)
  const leave = () => {
    setOther(null)
    onDone()
  }
  if (other === 'cannot')
    return (
      <NotPossibleForm
        state={state}
        wheel={wheel}
        field="tire"
        title={`Why can the ${wheelNames[wheel]} tire not be looked at?`}
        reasons={['locked away', 'under the load', 'covered', 'no spare in the vehicle']}
        onBack={() => setOther(null)}
        onDone={leave}
      />
    )
  const byPart = row !== undefined || other === 'parts'
  const rowsFor = (values: RowValues) =>
    byPart ? partRows(values, wheel, today, sidewallOf(state, wheel)) : lookRows(values, wheel)
  return (
    <RowForm
      key={byPart ? 'parts' : 'look'}
      draftKey={`${state.orderId}/tire/${wheel}${byPart ? '/parts' : ''}`}
      title={`Look at the ${wheelNames[wheel]} tire`}
      beside={tabs}
      rows={rowsFor}
      firstRow={row}
      recordsItself={!byPart}
      recordWord={nextWords === null || byPart ? 'Record what was looked at' : `Record · next ${nextWords}`}
      whyNot={(values) =>
        rowsFor(values).some(({ key }) => values[key])
          ? acrossFault(values)
          : 'Look at one thing at least, or go on to another.'
      }
      busy={busy}
      problem={problem}
      onRecord={async (values, form) => {
        const taken = await recordAll(entriesOf(state.orderId, wheel, values, today), `${wheel} tire`, {
          form,
        })
        if (taken) leave()
        return taken
      }}
    >
      {byPart ? null : (
        <div className="row">
          <Button onClick={() => setOther('parts')}>Size, date code, more</Button>
          <Button onClick={() => setOther('cannot')}>Cannot be looked at</Button>
        </div>
      )}
    </RowForm>
  )
}

/** What the sheet says of the tire that belongs at a wheel. */
const sidewallOf = ({ sheet }: OrderState, wheel: WheelPosition) => {
  const tire = tiresOf(sheet?.sheet)?.[axleOf(wheel)]
  return { sheetSize: tire?.size ?? null, hasPlies: tire?.loadClass.startsWith('LT-') ?? false }
}

const entriesOf = (
  orderId: string,
  wheel: WheelPosition,
  values: RowValues,
  today: CalendarDay,
): WrittenDraft[] => {
  const { mounted } = values
  const fitted = mounted === 'road' || mounted === 'temporary-spare' ? mounted : null
  const looked = Object.entries(values).some(([key, value]) => key !== 'mounted' && value)
  return [
    ...(looked ? [draftEntry(orderId, 'tire.inspected', tireInspectedOf(wheel, values, today))] : []),
    ...(fitted === null
      ? []
      : [
          draftEntry(orderId, 'wheel.checked', {
            phase: 'arrival',
            stepKey: null,
            wheel,
            mounted: fitted,
            gauge: null,
            sensor: null,
            notPossible: [],
          }),
        ]),
  ]
}
