import { namedOnly } from '@bayledger/ledger/second-person'
import { useState } from 'react'
import { draftEntry } from '../../../features/ledger/draft-entry.ts'
import { useSecondPeople } from '../../../features/people/second-person-fields.tsx'
import type { FilledForm } from '../../../ledger/parcel.ts'
import { keepDraft } from '../form/draft-store.ts'
import { RowForm } from '../form/row-form.tsx'
import type { Row } from '../form/rows.ts'
import { SecondPersonPin } from '../record/second-person-pin.tsx'
import { useRecord } from '../record/use-record.ts'
import { cautionWords, howWords, stepTitle, undoWords } from './step-words.ts'
import type { WheelFormProps } from './work-form.ts'

const rows: readonly Row[] = [
  {
    kind: 'choice',
    key: 'place',
    label: 'Where',
    options: [{ value: 'outdoors', label: 'Outdoors', detail: 'no flame, no spark near it' }],
  },
  {
    kind: 'choice',
    key: 'times',
    label: 'Let down and filled with air',
    options: [{ value: '4', label: 'Four times' }],
  },
]

/** The purge of a sealant's gas: nobody does it alone, so a second person says with their PIN that they know of it. */
export function PurgeForm({ state, step, wheel, onDone }: WheelFormProps) {
  const { recordAll, busy, problem } = useRecord(state.orderId)
  const people = useSecondPeople('sealant.purged')
  const [form, setForm] = useState<FilledForm | null>(null)
  if (form !== null)
    return (
      <SecondPersonPin
        people={people}
        title={stepTitle(step)}
        onBack={() => setForm(null)}
        busy={busy}
        problem={problem}
        onPin={async (staffId, pin) => {
          const purged = draftEntry(state.orderId, 'sealant.purged', {
            stepKey: step.stepKey,
            wheel,
            outdoors: true,
            times: 4,
            aware: namedOnly(staffId),
          })
          const taken = await recordAll([purged], undoWords(step), { form, pin })
          if (taken) {
            keepDraft(form.key, undefined)
            onDone()
          }
          return taken
        }}
      />
    )
  return (
    <RowForm
      draftKey={`${state.orderId}/${step.stepKey}`}
      title={stepTitle(step)}
      how={howWords(step)}
      caution={cautionWords(step)}
      rows={() => rows}
      recordWord="Go on: who else knows of it"
      busy={busy}
      problem={problem}
      onRecord={async (_values, filled) => {
        setForm(filled)
        return false
      }}
    />
  )
}
