import type { SentSide } from '@bayledger/contract/entries'
import { personal } from '../../../features/ledger/draft-entry.ts'
import type { FilledForm } from '../../../ledger/parcel.ts'
import { tooLong } from '../../../lib/fault-words.ts'
import { Button } from '../../../ui/button.tsx'
import { RowForm } from '../form/row-form.tsx'
import type { Row } from '../form/rows.ts'

type OwnFindingFormProps = {
  orderId: string
  onBack: () => void
  busy: boolean
  problem: unknown
  onRecord: (ownFinding: string, reason: SentSide, form: FilledForm) => Promise<boolean>
}

const rows: readonly Row[] = [
  {
    kind: 'text',
    key: 'finding',
    label: 'My finding',
    fault: (text) => tooLong(text, 200),
  },
  {
    kind: 'text',
    key: 'reason',
    label: 'My reason',
    suggestions: [
      'seen with my own eyes',
      'the reading was taken wrong',
      'known fault of this vehicle type',
    ].map((reason) => ({ value: reason, label: reason })),
  },
]

/** Disagreeing with the computed findings: both stay on record, side by side. */
export function OwnFindingForm({ orderId, onBack, busy, problem, onRecord }: OwnFindingFormProps) {
  return (
    <RowForm
      draftKey={`${orderId}/own-finding`}
      title="What do you find instead?"
      beside={<Button onClick={onBack}>Back to the findings</Button>}
      how="The computed findings stay beside yours, with your name and reason."
      rows={() => rows}
      recordWord="Record my own finding"
      busy={busy}
      problem={problem}
      onRecord={(values, form) =>
        onRecord((values.finding ?? '').trim(), personal((values.reason ?? '').trim()), form)
      }
    />
  )
}
