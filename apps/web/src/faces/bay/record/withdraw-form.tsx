import type { Foldable } from '@bayledger/ledger/fold/foldable'
import { definitionOf } from '@bayledger/ledger/registry'
import { draftEntry, personal } from '../../../features/ledger/draft-entry.ts'
import { entryWords } from '../../../features/ledger/entry-words.ts'
import { strikeReasons } from '../../../features/ledger/strike-reasons.ts'
import { Button } from '../../../ui/button.tsx'
import { useDraft } from '../form/draft-store.ts'
import { RowForm } from '../form/row-form.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { askForPerson } from '../session/lock-store.ts'
import { useSignedIn } from '../session/signed-in.ts'
import { useRecord } from './use-record.ts'

type WithdrawFormProps = { orderId: string; entry: Foldable; onBack: () => void; onDone: () => void }

/**
 * Withdraws an entry with a reason. A wheel off, a sealed round and a second check take two people: the one who asks
 * for it, and another who signs in with a PIN and withdraws it; both stand in the record.
 */
export function WithdrawForm({ orderId, entry, onBack, onDone }: WithdrawFormProps) {
  const { recordAll, busy, problem } = useRecord(orderId)
  const person = useSignedIn()
  const takesTwo = definitionOf(entry.kind).strikable === 'second-person'
  const asked = useDraft<string | null>(`${orderId}/withdraw-asked/${entry.id}`, null)
  const back = <Button onClick={onBack}>Keep it</Button>
  if (takesTwo && (asked.draft === null || asked.draft === person?.staffId))
    return (
      <StepScreen
        title={`Withdraw: ${entryWords(entry)}`}
        beside={back}
        how={
          asked.draft === null
            ? 'Withdrawing this takes a second person, who confirms with their own PIN.'
            : 'The second person must be somebody else.'
        }
        pad={
          <Button
            look="wide"
            onClick={() => {
              asked.change(person?.staffId ?? null)
              askForPerson()
            }}
          >
            Second person: sign in
          </Button>
        }
      />
    )
  return (
    <RowForm
      draftKey={`${orderId}/withdraw/${entry.id}`}
      title={`Withdraw: ${entryWords(entry)}`}
      beside={back}
      how="It stays in the record, struck, with your reason."
      rows={() => [
        { kind: 'choice', key: 'reason', label: 'Reason', options: strikeReasons },
        { kind: 'text', key: 'words', label: 'In words', optional: 'no more to say' },
      ]}
      recordWord="Withdraw it"
      busy={busy}
      problem={problem}
      onRecord={async (values) => {
        const said = (values.words ?? '').trim()
        const words = said === '' ? null : personal(said)
        const strike = draftEntry(orderId, 'entry.struck', {
          entryId: entry.id,
          reason: strikeReasons.find(({ value }) => value === values.reason)?.value ?? 'other',
          words: words?.digest ?? null,
          secondPersonId: takesTwo ? asked.draft : null,
        })
        const taken = await recordAll([strike], 'withdrawal', words === null ? [] : [words])
        if (taken) {
          asked.discard()
          onDone()
        }
        return taken
      }}
    />
  )
}
