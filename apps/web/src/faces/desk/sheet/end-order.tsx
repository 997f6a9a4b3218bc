import type { PayloadOf } from '@bayledger/ledger/registry'
import { useState } from 'react'
import { draftEntry, personal } from '../../../features/ledger/draft-entry.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ChoiceGroup } from '../../../ui/choice-group.tsx'
import { Dialog } from '../../../ui/dialog.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import type { OrderPart } from './order-part.ts'

type Withdrawn = PayloadOf<'order.withdrawn'>['reason']
type Declined = PayloadOf<'order.refused'>['reason']

const withdrawn: Readonly<Record<Withdrawn, string>> = {
  customer: 'The customer takes the order back',
  'opened-twice': 'It was opened twice',
  other: 'Another reason',
}
const declined: Readonly<Record<Declined, string>> = {
  'unsafe-request': 'We decline: the request is not safe',
  'would-disable-safety-system': 'We decline: it would disable a safety system',
  'out-of-scope': 'We decline: not our kind of work',
}
const options = Object.entries({ ...withdrawn, ...declined }).map(([value, label]) => ({
  value: value as Withdrawn | Declined,
  label,
}))

const isDeclined = (reason: Withdrawn | Declined): reason is Declined => Object.hasOwn(declined, reason)

/** Ends an order without work: withdrawn by the customer or declined by the shop, with a reason for the record. */
export function EndOrder({ order, onClose }: OrderPart & { onClose: () => void }) {
  const [reason, setReason] = useState<Withdrawn | Declined | null>(null)
  const [words, setWords] = useState('')
  const write = useWriteEntries(order.orderId)
  const end = () => {
    if (reason === null) return
    const said = personal(words.trim())
    write.mutate(
      {
        entries: [
          isDeclined(reason)
            ? draftEntry(order.orderId, 'order.refused', { reason, words: said.digest })
            : draftEntry(order.orderId, 'order.withdrawn', { reason, words: said.digest }),
        ],
        sides: [said],
      },
      { onSuccess: onClose },
    )
  }
  return (
    <Dialog title="Cancel the order" onClose={onClose}>
      <div className="stack">
        <p>This cannot be withdrawn. A vehicle that comes back gets a new order.</p>
        <ChoiceGroup label="Why" flow="column" options={options} value={reason} onChange={setReason} />
        <TextField label="In words" value={words} onChange={setWords} />
        {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
        <Button
          look="main"
          busy={write.isPending}
          whyNot={reason === null ? 'Say why.' : words.trim() === '' ? 'Say it in words too.' : undefined}
          onClick={end}
        >
          Cancel it
        </Button>
      </div>
    </Dialog>
  )
}
