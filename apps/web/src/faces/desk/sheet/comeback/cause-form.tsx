import { coverRoles } from '@bayledger/ledger/role'
import { ComebackCause } from '@bayledger/reckoning/money/line-cover'
import { comebackCauses } from '@bayledger/wording/en/comeback-causes'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { draftEntry, personal } from '../../../../features/ledger/draft-entry.ts'
import { useWriteEntries } from '../../../../features/ledger/write-entries.ts'
import { sessionQuery } from '../../../../features/people/queries.ts'
import { problemText } from '../../../../lib/problem.ts'
import { Button } from '../../../../ui/button.tsx'
import { ChoiceGroup } from '../../../../ui/choice-group.tsx'
import { ProblemNotice } from '../../../../ui/problem-notice.tsx'
import { TextField } from '../../../../ui/text-field.tsx'
import type { OrderPart } from '../order-part.ts'

const details: Readonly<Record<ComebackCause, string>> = {
  workmanship: 'What we did was not right, or was not finished.',
  'part-failed': 'A part that we fitted does not work any more.',
  'new-damage': 'Something happened to the vehicle since it was here.',
  'not-found': 'Nothing is wrong today.',
  'something-else': 'Write it in a few words.',
}

type CauseFormProps = OrderPart & { onSaved?: () => void }

/** Records why the vehicle came back. What was recorded before stays on record; this one counts. */
export function CauseForm({ order, onSaved }: CauseFormProps) {
  const [cause, setCause] = useState<ComebackCause | null>(null)
  const [words, setWords] = useState('')
  const session = useQuery(sessionQuery)
  const write = useWriteEntries(order.orderId)
  const mayJudge = session.data?.staff.roles.some((role) => coverRoles.includes(role)) ?? true
  if (!mayJudge) return <p>A lead, a manager or the owner records why it came back.</p>
  const save = () => {
    if (cause === null) return
    const said = words.trim() === '' ? null : personal(words.trim())
    write.mutate(
      {
        entries: [
          draftEntry(order.orderId, 'comeback.judged', { cause, words: said === null ? null : said.digest }),
        ],
        sides: said === null ? [] : [said],
      },
      { onSuccess: () => onSaved?.() },
    )
  }
  const whyNot =
    cause === null
      ? 'Choose the cause.'
      : cause === 'something-else' && words.trim() === ''
        ? 'Write what the cause is.'
        : undefined
  return (
    <div className="stack">
      <ChoiceGroup
        label="Why did it come back?"
        flow="column"
        options={ComebackCause.options.map((value) => ({
          value,
          label: comebackCauses[value],
          detail: details[value],
        }))}
        value={cause}
        onChange={setCause}
      />
      <TextField
        label="In a few words"
        hint={cause === 'something-else' ? 'The customer reads it on the report.' : 'For the shop.'}
        maxLength={200}
        value={words}
        onChange={setWords}
      />
      {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
      <Button look="main" whyNot={whyNot} busy={write.isPending} onClick={save}>
        Record the cause
      </Button>
    </div>
  )
}
