import { draftEntry } from '../../../features/ledger/draft-entry.ts'
import { tooLong } from '../../../lib/fault-words.ts'
import { Button } from '../../../ui/button.tsx'
import { RowForm } from '../form/row-form.tsx'
import { useRecord } from '../record/use-record.ts'

const reasons = [
  'the customer does not know',
  'it cannot be reached now',
  'the tool for it is not here',
  'it would not change what is done',
]

type SkipFormProps = {
  orderId: string
  /** Every field of the evidence that the question is about: one look may be about four wheels. */
  fields: readonly string[]
  /** The question, in words. */
  asks: string
  onBack: () => void
  onDone: () => void
}

/** A check that nobody makes, with the reason: the report says that it could not be checked. */
export function SkipForm({ orderId, fields, asks, onBack, onDone }: SkipFormProps) {
  const { recordAll, busy, problem } = useRecord(orderId)
  return (
    <RowForm
      draftKey={`${orderId}/skip/${fields.join(' ')}`}
      title="Skip this check: why?"
      takesFocus
      beside={<Button onClick={onBack}>Back</Button>}
      how={`${asks} It is left open, and the report says why.`}
      rows={() => [
        {
          kind: 'text',
          key: 'why',
          label: 'Reason',
          suggestions: reasons.map((reason) => ({ value: reason, label: reason })),
          fault: (text) => tooLong(text, 200),
        },
      ]}
      recordsItself
      recordWord="Skip it"
      busy={busy}
      problem={problem}
      onRecord={async (values, form) => {
        const why = (values.why ?? '').trim()
        const drafts = fields.map((field) => draftEntry(orderId, 'check.skipped', { field, why }))
        const taken = await recordAll(drafts, 'skipped check', { form })
        if (taken) onDone()
        return taken
      }}
    />
  )
}
