import { studsOf } from '@bayledger/reckoning/sheet'
import { readingOrder } from '@bayledger/reckoning/wheels'
import type { Row } from '../form/rows.ts'
import type { WheelFormProps } from './work-form.ts'
import { WorkRows } from './work-rows.tsx'

/** The wheel goes on by hand; nothing is assumed about its seats and threads. */
export function WheelOnForm(props: WheelFormProps) {
  const { state, step, wheel } = props
  const studs = studsOf(state.sheet?.sheet)
  const fastener = studs?.fastener ?? 'nut'
  const comesFrom = step.comesFrom ?? wheel
  const rows: readonly Row[] = [
    {
      kind: 'choice',
      key: 'seats',
      label: 'Seats and faces',
      options: [
        {
          value: 'match',
          label: 'Right and clean',
          detail: `${studs?.seat ?? ''} seat by the sheet`,
        },
      ],
    },
    {
      kind: 'choice',
      key: 'hand',
      label: `Every ${fastener}`,
      options: [
        {
          value: 'started',
          label: 'By hand',
          detail: `${studs?.handTurns ?? ''} turns, no resistance`,
        },
      ],
    },
    {
      kind: 'choice',
      key: 'cameFrom',
      label: 'This wheel came from',
      options: [comesFrom, ...readingOrder.filter((from) => from !== comesFrom)].map((from) => ({
        value: from,
        label: from,
        ...(from === wheel ? { detail: 'the same place' } : {}),
      })),
    },
  ]
  return (
    <WorkRows
      {...props}
      kind="wheel.mounted"
      rows={() => rows}
      recordsItself
      recordWord={`${wheel} wheel is on: record`}
      payload={(values) =>
        values.seats === 'match' && values.hand === 'started'
          ? {
              stepKey: step.stepKey,
              wheel,
              cameFrom: readingOrder.find((from) => from === values.cameFrom) ?? comesFrom,
              seatsMatch: true,
              handStarted: true,
            }
          : null
      }
    />
  )
}
