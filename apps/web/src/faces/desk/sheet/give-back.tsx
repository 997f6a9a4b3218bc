import { leftByMethod, paidBySides } from '@bayledger/ledger/questions/money'
import { useQuery } from '@tanstack/react-query'
import { useRef, useState } from 'react'
import { draftEntry, newId, personal } from '../../../features/ledger/draft-entry.ts'
import { orderMoney } from '../../../features/ledger/order-money.ts'
import { orderQuery } from '../../../features/ledger/order-query.ts'
import { moneySide } from '../../../features/ledger/seal-money.ts'
import { useWriteEntries, type Writing } from '../../../features/ledger/write-entries.ts'
import { money } from '../../../lib/format.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ChoiceGroup } from '../../../ui/choice-group.tsx'
import { Dialog } from '../../../ui/dialog.tsx'
import { NumberField } from '../../../ui/number-field.tsx'
import type { TypedFigure } from '../../../ui/number-text.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import type { OrderPart } from './order-part.ts'
import { centsOf, missingInRefund, type PaymentMethod, paymentMethods } from './payment-form.ts'

/** The methods by which something was paid that is not yet given back, with what is left. */
export const returnable = (order: OrderPart['order']) =>
  paymentMethods.flatMap(({ value, label }) => {
    const left = leftByMethod(order.state, orderMoney(order), value)
    return left === null || left <= 0 ? [] : [{ value, label: `${label}, at most ${money(left)}`, left }]
  })

type GiveBackProps = OrderPart & {
  /** The method that is chosen first. */
  readonly method: PaymentMethod | null
  /** What was paid too much, if anything, cents. */
  readonly overpaidCents: number
  readonly onClose: () => void
}

/**
 * Gives money back by the method by which it was paid. One opened dialog makes one entry: what it rests on is taken when it
 * opens, and the same content is sent again as the same entry.
 */
export function GiveBack({ order, method: first, overpaidCents, onClose }: GiveBackProps) {
  const [opened] = useState(order)
  const options = returnable(opened)
  const [method, setMethod] = useState<PaymentMethod | null>(
    options.find(({ value }) => value === first)?.value ??
      (options.length === 1 ? options[0]?.value : null) ??
      null,
  )
  const left = options.find(({ value }) => value === method)?.left ?? 0
  const [amount, setAmount] = useState<TypedFigure>(
    overpaidCents > 0 && overpaidCents <= left ? overpaidCents / 100 : null,
  )
  const [why, setWhy] = useState('')
  const write = useWriteEntries(order.orderId)
  const made = useRef<{ readonly of: string; readonly writing: Writing } | null>(null)
  const [entryId] = useState(newId)
  const cents = centsOf(amount) ?? 0
  const give = () => {
    if (method === null) return
    const of = `${cents} ${method} ${why}`
    if (made.current?.of !== of) {
      const [side, words] = [moneySide({ amountCents: 0 - cents }), personal(why.trim())]
      const back = { why: words.digest, of: paidBySides(opened.state, method) }
      const draft = draftEntry(order.orderId, 'payment.noted', { money: side.digest, method, back })
      made.current = { of, writing: { entries: [{ ...draft, id: entryId }], sides: [side, words] } }
    }
    write.mutate(made.current.writing, { onSuccess: onClose })
  }
  return (
    <Dialog title="Give money back" onClose={onClose}>
      <div className="stack">
        <p>
          It goes back the way it was paid, and takes a manager or the owner. The customer reads the reason on
          the receipt.
        </p>
        <ChoiceGroup label="Paid by" options={options} value={method} onChange={setMethod} />
        <NumberField label="Amount given back" unit="$" value={amount} onChange={setAmount} />
        <TextField label="Why" value={why} onChange={setWhy} />
        {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
        <Button
          look="main"
          busy={write.isPending}
          whyNot={missingInRefund({ typed: amount, method, leftCents: left, why })}
          onClick={give}
        >
          Record that it was given back
        </Button>
      </div>
    </Dialog>
  )
}

/** The same for an order that is not open on this page. */
export function GiveBackOf({
  orderId,
  ...rest
}: Omit<GiveBackProps, 'order' | 'overpaidCents'> & { readonly orderId: string }) {
  const order = useQuery(orderQuery(orderId))
  if (order.data !== undefined) return <GiveBack order={order.data} overpaidCents={0} {...rest} />
  return order.isError ? (
    <ProblemNotice problem={problemText(order.error)} onRetry={() => void order.refetch()} />
  ) : (
    <StatusLine>Reading the order.</StatusLine>
  )
}
