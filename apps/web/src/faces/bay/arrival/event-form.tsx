import type { OrderState } from '@bayledger/ledger/state'
import type { EventEvidence } from '@bayledger/reckoning/evidence/evidence'
import { roadPositions } from '@bayledger/reckoning/wheels'
import { wheelNames } from '@bayledger/wording/en/wheels'
import type { RowValues } from '../../../ui/rows/rows.ts'
import { RowForm } from '../form/row-form.tsx'
import type { Row } from '../form/rows.ts'
import { useRecord } from '../record/use-record.ts'
import { eventOf, withEvent } from './told-event.ts'

type EventFormProps = {
  state: OrderState
  event: EventEvidence['kind']
  /** The question as the rules put it. */
  question: string
  row?: string | undefined
  onDone: () => void
}

/** One recent event, or that it did not happen, as the customer reports or the vehicle shows. */
export function EventForm({ state, event, question, row, onDone }: EventFormProps) {
  const { record, busy, problem } = useRecord(state.orderId)
  const { complaint } = state
  return (
    <RowForm
      draftKey={`${state.orderId}/told/${event}`}
      title={question}
      how="It goes beside the complaint, which stays as it was told."
      rows={rowsFor}
      blank={row === 'wheel' ? { happened: 'yes' } : {}}
      firstRow={row}
      recordWord="Record the answer"
      whyNot={() => (complaint === null ? 'The desk has not written up the complaint yet.' : undefined)}
      busy={busy}
      problem={problem}
      onRecord={async (values, form) => {
        if (complaint === null) return false
        const taken = await record(
          'complaint.recorded',
          {
            words: complaint.words,
            reportedLight: complaint.reportedLight,
            events: withEvent(complaint.events, eventOf(event, values)),
          },
          'what was told',
          form,
        )
        if (taken) onDone()
        return taken
      }}
    />
  )
}

const rowsFor = (values: RowValues): readonly Row[] => [
  {
    kind: 'choice',
    key: 'happened',
    label: 'Did it happen?',
    options: [
      { value: 'yes', label: 'Yes' },
      { value: 'no', label: 'No' },
    ],
  },
  ...(values.happened === 'yes'
    ? [
        {
          kind: 'choice',
          key: 'wheel',
          label: 'Which wheel',
          optional: 'none named',
          options: roadPositions.map((wheel) => ({ value: wheel, label: wheelNames[wheel] })),
        } as const,
        {
          kind: 'number',
          key: 'daysAgo',
          label: 'How long ago',
          unit: 'days',
          low: 0,
          high: 9_999,
          limits: { whole: 4, decimals: 0 },
          optional: 'not known',
        } as const,
      ]
    : []),
]
