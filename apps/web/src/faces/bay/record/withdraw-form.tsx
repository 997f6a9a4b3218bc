import type { SentSide } from '@bayledger/contract/entries'
import type { Foldable } from '@bayledger/ledger/fold/foldable'
import { definitionOf } from '@bayledger/ledger/registry'
import { namedOnly } from '@bayledger/ledger/second-person'
import { useState } from 'react'
import { draftEntry, personal, type WrittenDraft } from '../../../features/ledger/draft-entry.ts'
import { entryWords } from '../../../features/ledger/entry-words.ts'
import { strikeReasons } from '../../../features/ledger/strike-reasons.ts'
import { wasRefused } from '../../../features/ledger/write-entries.ts'
import { useSecondPeople } from '../../../features/people/second-person-fields.tsx'
import { Button } from '../../../ui/button.tsx'
import { RowForm } from '../form/row-form.tsx'
import { SecondPersonPin } from './second-person-pin.tsx'
import { useRecord } from './use-record.ts'

type WithdrawFormProps = { orderId: string; entry: Foldable; onBack: () => void; onDone: () => void }
type Strike = { readonly draft: WrittenDraft<'entry.struck'>; readonly sides: readonly SentSide[] }

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
  const send = async ({ draft, sides }: Strike, pin?: string): Promise<boolean> => {
    const taken = await recordAll([draft], 'withdrawal', {
      sides,
      ...(pin === undefined ? {} : { pin }),
    })
    if (taken) onDone()
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
        onPin={(staffId, pin) => {
          const named = naming(waiting, staffId)
          setWaiting(named)
          return send(named, pin)
        }}
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
      onRecord={async (values) => {
        const said = (values.words ?? '').trim()
        const words = said === '' ? null : personal(said)
        const draft = draftEntry(orderId, 'entry.struck', {
          entryId: entry.id,
          reason: strikeReasons.find(({ value }) => value === values.reason)?.value ?? 'other',
          words: words?.digest ?? null,
          secondPerson: null,
        })
        const strike = { draft, sides: words === null ? [] : [words] }
        if (!takesTwo) return send(strike)
        setWaiting(strike)
        return false
      }}
    />
  )
}

/**
 * The withdrawal with this second person; the same one where it names them already, so that a retry stays the same. One
 * that the ledger refused is written anew.
 */
const naming = (strike: Strike, staffId: string): Strike => {
  const { draft } = strike
  const { orderId, payload } = draft
  return payload.secondPerson?.staffId === staffId && !wasRefused(draft)
    ? strike
    : {
        ...strike,
        draft: draftEntry(orderId, 'entry.struck', { ...payload, secondPerson: namedOnly(staffId) }),
      }
}
