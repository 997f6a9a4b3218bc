import { givenBackCents, owedCents, payment } from '@bayledger/ledger/questions/money'
import type { NotedPayment } from '@bayledger/ledger/state'
import { useState } from 'react'
import { draftEntry } from '../../../features/ledger/draft-entry.ts'
import { orderMoney } from '../../../features/ledger/order-money.ts'
import { moneySide } from '../../../features/ledger/seal-money.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import { useStaffNames } from '../../../features/people/queries.ts'
import { money } from '../../../lib/format.ts'
import { moneyWords } from '../../../lib/money-words.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ChoiceGroup } from '../../../ui/choice-group.tsx'
import { NumberField } from '../../../ui/number-field.tsx'
import type { TypedFigure } from '../../../ui/number-text.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { useTimes } from '../shop-clock.ts'
import { CorrectPayment } from './correct-payment.tsx'
import { GiveBack, returnable } from './give-back.tsx'
import type { OrderPart } from './order-part.ts'
import { centsOf, methodWords, missingInPayment, type PaymentMethod, paymentMethods } from './payment-form.ts'

/** What is owed, what was paid and how, with corrections; and the next payment. */
export function PaymentPart({ order }: OrderPart) {
  const [correcting, setCorrecting] = useState<NotedPayment | null>(null)
  const [givingBack, setGivingBack] = useState(false)
  const owed = owedCents(order.state, orderMoney(order))
  return (
    <div className="stack">
      {order.state.payments.map((noted) => (
        <PaymentLine
          key={noted.written.entryId}
          order={order}
          noted={noted}
          onCorrect={() => setCorrecting(noted)}
        />
      ))}
      {owed === null ? (
        <p className="quiet">What is owed is not shown here.</p>
      ) : (
        <Owed cents={owed} givenBack={givenBackCents(order.state, orderMoney(order)) ?? 0} />
      )}
      {owed === null || owed <= 0 ? null : (
        <NotePayment key={`${order.state.payments.length} ${owed}`} order={order} owed={owed} />
      )}
      {returnable(order).length === 0 ? null : (
        <p>
          <Button onClick={() => setGivingBack(true)}>Give money back</Button>
        </p>
      )}
      {givingBack ? (
        <GiveBack
          order={order}
          method={null}
          overpaidCents={Math.max(0, 0 - (owed ?? 0))}
          onClose={() => setGivingBack(false)}
        />
      ) : null}
      {correcting === null ? null : (
        <CorrectPayment order={order} noted={correcting} onClose={() => setCorrecting(null)} />
      )}
    </div>
  )
}

/** What was given back may be meant for good, or be paid another way: who reads it sees why something is open. */
function Owed({ cents, givenBack }: { cents: number; givenBack: number }) {
  if (cents === 0) return <p>Nothing is owed.</p>
  const open = givenBack > 0 ? `Open after ${money(givenBack)} was given back` : 'Owed and not yet paid'
  return (
    <p>
      {cents > 0 ? open : 'Paid more than is owed'}: <strong>{money(Math.abs(cents))}</strong>
    </p>
  )
}

type LineProps = OrderPart & { noted: NotedPayment; onCorrect: () => void }

function PaymentLine({ order, noted, onCorrect }: LineProps) {
  const { when, at } = useTimes()
  const nameOf = useStaffNames()
  const sides = orderMoney(order)
  const sum = (digest: string) => moneyWords(payment(sides, digest)?.amountCents)
  const paid = payment(sides, noted.money)?.amountCents
  const { back } = noted
  const who = ({ written }: { written: NotedPayment['written'] }) =>
    written.by.kind === 'staff' ? nameOf(written.by.staffId) : 'the shop'
  return (
    <div>
      <p>
        {back ? 'Gave back' : 'Paid'}{' '}
        <strong>{moneyWords(back && typeof paid === 'number' ? 0 - paid : paid)}</strong> by{' '}
        {methodWords[noted.method]}
        {back ? `, because: ${order.personalText(back.why)}` : ''}{' '}
        <span className="quiet">
          {when(noted.written.writtenAt)}, {who(noted)}
        </span>
      </p>
      {noted.corrections.map((before) => (
        <p key={before.written.entryId} className="quiet">
          Noted before as {sum(before.money)} by {methodWords[before.method]}; corrected{' '}
          {at(before.written.writtenAt)} by {who(before)}: {order.personalText(before.why)}
        </p>
      ))}
      <Button onClick={onCorrect}>Correct this payment</Button>
    </div>
  )
}

function NotePayment({ order, owed }: OrderPart & { owed: number }) {
  const [amount, setAmount] = useState<TypedFigure>(owed / 100)
  const [method, setMethod] = useState<PaymentMethod | null>(null)
  const [asking, setAsking] = useState(false)
  const write = useWriteEntries(order.orderId)
  const cents = centsOf(amount) ?? 0
  const note = () => {
    if (method === null) return
    const side = moneySide({ amountCents: cents })
    write.mutate(
      {
        entries: [draftEntry(order.orderId, 'payment.noted', { money: side.digest, method, back: null })],
        sides: [side],
      },
      { onSettled: () => setAsking(false) },
    )
  }
  return (
    <div className="stack">
      <NumberField label="Amount received" unit="$" value={amount} onChange={setAmount} />
      <ChoiceGroup label="Paid by" options={paymentMethods} value={method} onChange={setMethod} />
      {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
      {asking && method !== null ? (
        <div className="row">
          <p>
            {money(cents)} by {methodWords[method]}
            {cents === owed ? '' : `; ${money(owed)} is owed`}. Is this right?
          </p>
          <Button look="main" autoFocus busy={write.isPending} onClick={note}>
            Yes, note it
          </Button>
          <Button onClick={() => setAsking(false)}>No, change it</Button>
        </div>
      ) : (
        <Button whyNot={missingInPayment(amount, method)} onClick={() => setAsking(true)}>
          Note the payment
        </Button>
      )}
    </div>
  )
}
