import { namedOnly } from '@bayledger/ledger/second-person'
import { useState } from 'react'
import { draftEntry, type WrittenDraft } from '../../../features/ledger/draft-entry.ts'
import { wasRefused } from '../../../features/ledger/write-entries.ts'
import { useSecondPeople } from '../../../features/people/second-person-fields.tsx'
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
  const [waiting, setWaiting] = useState<WrittenDraft<'sealant.purged'> | null>(null)
  const naming = (staffId: string, known: WrittenDraft<'sealant.purged'> | null) =>
    known?.payload.aware.staffId === staffId && !wasRefused(known)
      ? known
      : draftEntry(state.orderId, 'sealant.purged', {
          stepKey: step.stepKey,
          wheel,
          outdoors: true,
          times: 4,
          aware: namedOnly(staffId),
        })
  const [isFilledIn, setFilledIn] = useState(false)
  if (isFilledIn)
    return (
      <SecondPersonPin
        people={people}
        title={stepTitle(step)}
        onBack={() => setFilledIn(false)}
        busy={busy}
        problem={problem}
        onPin={async (staffId, pin) => {
          const named = naming(staffId, waiting)
          setWaiting(named)
          const taken = await recordAll([named], undoWords(step), { pin })
          if (taken) onDone()
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
      onRecord={async () => {
        setFilledIn(true)
        return false
      }}
    />
  )
}
