import { draftEntry, personal } from '../../../features/ledger/draft-entry.ts'
import { Button } from '../../../ui/button.tsx'
import { RowForm } from '../form/row-form.tsx'
import type { Row } from '../form/rows.ts'
import { useRecord } from '../record/use-record.ts'
import { stepTitle } from './step-words.ts'
import type { WorkFormProps } from './work-form.ts'

const reasons = [
  'not needed after all',
  'customer asked to leave it',
  'not possible on this vehicle',
  'done by another shop',
]

const rows: readonly Row[] = [
  {
    kind: 'text',
    key: 'reason',
    label: 'Reason',
    suggestions: reasons.map((reason) => ({ value: reason, label: reason })),
  },
]

/** A step that will not be done is set aside with a reason, which the report names. */
export function SetAsideForm({
  state,
  step,
  onDone,
  onBack,
}: Omit<WorkFormProps, 'onFigure'> & { onBack: () => void }) {
  const { recordAll, busy, problem } = useRecord(state.orderId)
  return (
    <RowForm
      draftKey={`${state.orderId}/aside/${step.stepKey}`}
      title={`Set aside: ${stepTitle(step)}`}
      beside={<Button onClick={onBack}>Back to the step</Button>}
      how="It will not be done on this visit. The reason is kept in the record."
      rows={() => rows}
      recordWord="Set the step aside"
      busy={busy}
      problem={problem}
      onRecord={async (values, form) => {
        const reason = personal((values.reason ?? '').trim())
        const draft = draftEntry(state.orderId, 'step.set_aside', {
          stepKey: step.stepKey,
          reason: reason.digest,
        })
        const taken = await recordAll([draft], 'step set aside', { sides: [reason], form })
        if (taken) onDone()
        return taken
      }}
    />
  )
}
