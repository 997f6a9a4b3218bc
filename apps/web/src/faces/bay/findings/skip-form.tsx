import type { NextCheck } from '@bayledger/reckoning/diagnosis/diagnosis'
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
  check: NextCheck
  /** What the check asks, in words. */
  asks: string
  onBack: () => void
  onDone: () => void
}

/** A check that nobody makes, with the reason: the report says that it could not be checked. */
export function SkipForm({ orderId, check, asks, onBack, onDone }: SkipFormProps) {
  const { record, busy, problem } = useRecord(orderId)
  return (
    <RowForm
      draftKey={`${orderId}/skip/${check.field}`}
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
          fault: (text) => (text.length > 200 ? 'Keep it to 200 letters.' : undefined),
        },
      ]}
      recordsItself
      recordWord="Skip it"
      busy={busy}
      problem={problem}
      onRecord={async (values, restore) => {
        const taken = await record(
          'check.skipped',
          { field: check.field, why: (values.why ?? '').trim() },
          'skipped check',
          restore,
        )
        if (taken) onDone()
        return taken
      }}
    />
  )
}
