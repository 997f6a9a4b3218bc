import { payment } from '@bayledger/ledger/questions/money'
import type { NotedPayment } from '@bayledger/ledger/state'
import { useState } from 'react'
import { draftEntry, personal } from '../../../features/ledger/draft-entry.ts'
import { orderMoney } from '../../../features/ledger/order-money.ts'
import { moneySide } from '../../../features/ledger/seal-money.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ChoiceGroup } from '../../../ui/choice-group.tsx'
import { Dialog } from '../../../ui/dialog.tsx'
import { NumberField } from '../../../ui/number-field.tsx'
import type { TypedFigure } from '../../../ui/number-text.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import type { OrderPart } from './order-part.ts'
import { centsOf, type PaymentMethod, paymentMethods } from './payment-form.ts'

/** Corrects a payment by an entry of its own: what was noted first stays on record. */
export function CorrectPayment({
  order,
  noted,
  onClose,
}: OrderPart & { noted: NotedPayment; onClose: () => void }) {
  const before = payment(orderMoney(order), noted.money)?.amountCents ?? 0
  const [amount, setAmount] = useState<TypedFigure>(Math.abs(before) / 100)
  const [method, setMethod] = useState<PaymentMethod>(noted.method)
  const [why, setWhy] = useState('')
  const write = useWriteEntries(order.orderId)
  const typed = centsOf(amount)
  const cents = typed === null || !noted.back ? typed : 0 - typed
  const correct = () => {
    if (cents === null) return
    const [side, words] = [moneySide({ amountCents: cents }), personal(why.trim())]
    write.mutate(
      {
        entries: [
          draftEntry(order.orderId, 'payment.corrected', {
            paymentId: noted.written.entryId,
            replaces: noted.money,
            money: side.digest,
            method,
            why: words.digest,
          }),
        ],
        sides: [side, words],
      },
      { onSuccess: onClose },
    )
  }
  return (
    <Dialog title="Correct the payment" onClose={onClose}>
      <div className="stack">
        <p>
          What was noted first stays on record, with your reason. A smaller amount takes a manager or the
          owner.
        </p>
        <NumberField
          label={noted.back ? 'Amount really given back' : 'Amount really received'}
          unit="$"
          value={amount}
          onChange={setAmount}
        />
        <ChoiceGroup label="Really paid by" options={paymentMethods} value={method} onChange={setMethod} />
        <TextField label="Why" value={why} onChange={setWhy} />
        {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
        <Button
          look="main"
          busy={write.isPending}
          whyNot={
            cents === null
              ? 'Type the amount in dollars, with at most two decimals.'
              : why.trim() === ''
                ? 'Say why.'
                : undefined
          }
          onClick={correct}
        >
          Record the correction
        </Button>
      </div>
    </Dialog>
  )
}
