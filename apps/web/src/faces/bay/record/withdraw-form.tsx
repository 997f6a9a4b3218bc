import type { SentSide } from '@bayledger/contract/entries'
import type { Foldable } from '@bayledger/ledger/fold/foldable'
import { definitionOf } from '@bayledger/ledger/registry'
import { namedOnly } from '@bayledger/ledger/second-person'
import { useState } from 'react'
import { draftEntry, personal, type WrittenDraft } from '../../../features/ledger/draft-entry.ts'
import { entryWords } from '../../../features/ledger/entry-words.ts'
import { strikeReasons } from '../../../features/ledger/strike-reasons.ts'
import { useSecondPeople } from '../../../features/people/second-person-fields.tsx'
import type { FilledForm } from '../../../ledger/parcel.ts'
import { Button } from '../../../ui/button.tsx'
import { keepDraft } from '../form/draft-store.ts'
import { RowForm } from '../form/row-form.tsx'
import { SecondPersonPin } from './second-person-pin.tsx'
import { useRecord } from './use-record.ts'

type WithdrawFormProps = { orderId: string; entry: Foldable; onBack: () => void; onDone: () => void }
type Strike = {
  readonly draft: WrittenDraft<'entry.struck'>
  readonly sides: readonly SentSide[]
  readonly form: FilledForm
}

/**
 * Withdraws an entry with a reason. A wheel off, a sealed round and a second check take two people: the one who
 * withdraws it, and another who agrees with their PIN; both are in the record.
 */
export function WithdrawForm({ orderId, entry, onBack, onDone }: WithdrawFormProps) {
  const { recordAll, busy, problem } = useRecord(orderId)
  const people = useSecondPeople('entry.struck')
  const [waiting, setWaiting] = useState<Strike | null>(null)
  const takesTwo = definitionOf(entry.kind).strikable === 'second-person'
  const title = `Withdraw: ${entryWords(entry)}`
  const send = async ({ draft, sides, form }: Strike, pin?: string): Promise<boolean> => {
    const taken = await recordAll([draft], 'withdrawal', {
      form,
      sides,
      ...(pin === undefined ? {} : { pin }),
    })
    if (taken) {
      keepDraft(form.key, undefined)
      onDone()
    }
    return taken
  }
  if (waiting !== null)
    return (
      <SecondPersonPin
        people={people}
        title={title}
        onBack={() => setWaiting(null)}
        busy={busy}
        problem={problem}
        onPin={(staffId, pin) => send(agreedBy(waiting, staffId), pin)}
      />
    )
  return (
    <RowForm
      draftKey={`${orderId}/withdraw/${entry.id}`}
      title={title}
      beside={<Button onClick={onBack}>Keep it</Button>}
      how="It stays in the record, struck, with your reason."
      rows={() => [
        { kind: 'choice', key: 'reason', label: 'Reason', options: strikeReasons },
        { kind: 'text', key: 'words', label: 'In words', optional: 'no more to say' },
      ]}
      recordWord={takesTwo ? 'Go on: second person' : 'Withdraw it'}
      busy={busy}
      problem={problem}
      onRecord={async (values, form) => {
        const said = (values.words ?? '').trim()
        const words = said === '' ? null : personal(said)
        const reason = strikeReasons.find(({ value }) => value === values.reason)?.value ?? 'other'
        const draft = draftEntry(
          orderId,
          'entry.struck',
          { entryId: entry.id, reason, words: words?.digest ?? null, secondPerson: null },
          [entry.id],
        )
        const strike = { draft, sides: words === null ? [] : [words], form }
        if (!takesTwo) return send(strike)
        setWaiting(strike)
        return false
      }}
    />
  )
}

/** The withdrawal with this second person. */
const agreedBy = ({ draft, ...beside }: Strike, staffId: string): Strike => {
  const { orderId, payload, restsOn } = draft
  const secondPerson = namedOnly(staffId)
  return { draft: draftEntry(orderId, 'entry.struck', { ...payload, secondPerson }, restsOn), ...beside }
}
