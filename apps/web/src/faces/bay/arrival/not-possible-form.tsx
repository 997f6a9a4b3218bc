import { lookedAt } from '@bayledger/ledger/questions/gates'
import type { OrderState } from '@bayledger/ledger/state'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { tooLong } from '../../../lib/fault-words.ts'
import { Button } from '../../../ui/button.tsx'
import { RowForm } from '../form/row-form.tsx'
import { useRecord } from '../record/use-record.ts'

type NotPossibleFormProps = {
  state: OrderState
  wheel: WheelPosition
  /** What stays empty, with a reason. */
  field: keyof typeof fields
  title: string
  reasons: readonly string[]
  onBack: () => void
  onDone: () => void
}

/** The fields of the evidence that each of them leaves empty. */
const fields = { gauge: ['gauge'], tire: lookedAt } as const

const cannot = {
  gauge: 'cannot be gauged',
  tire: 'cannot be looked at',
} as const

/** What could not be checked is recorded with its reason: it is neither a no nor a yes. */
export function NotPossibleForm({
  state,
  wheel,
  field,
  title,
  reasons,
  onBack,
  onDone,
}: NotPossibleFormProps) {
  const { record, busy, problem } = useRecord(state.orderId)
  return (
    <RowForm
      draftKey={`${state.orderId}/not-possible/${wheel}/${field}`}
      title={title}
      beside={<Button onClick={onBack}>Back</Button>}
      how="It is recorded as could not be checked, and stays so on the report."
      rows={() => [
        {
          kind: 'text',
          key: 'why',
          label: 'Reason',
          suggestions: reasons.map((reason) => ({ value: reason, label: reason })),
          fault: (text) => tooLong(text, 200),
        },
      ]}
      recordWord="Record the reason"
      busy={busy}
      problem={problem}
      onRecord={async (values, form) => {
        const taken = await record(
          'wheel.checked',
          {
            phase: 'arrival',
            stepKey: null,
            wheel,
            mounted: null,
            gauge: null,
            sensor: null,
            notPossible: fields[field].map((one) => ({ field: one, why: (values.why ?? '').trim() })),
          },
          `${wheel} ${cannot[field]}`,
          form,
        )
        if (taken) onDone()
        return taken
      }}
    />
  )
}
