import { sealOrderReport } from '@bayledger/contract/reports'
import { proofOf, sealGate } from '@bayledger/ledger/questions/gates'
import { owedCents } from '@bayledger/ledger/questions/money'
import { gates } from '@bayledger/wording/en/gates'
import { gateWords } from '@bayledger/wording/gates'
import { useMutation, useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { draftEntry, newId } from '../../../features/ledger/draft-entry.ts'
import { orderMoney } from '../../../features/ledger/order-money.ts'
import { orderKey } from '../../../features/ledger/order-query.ts'
import { moneySide } from '../../../features/ledger/seal-money.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import {
  namedBy,
  SecondPersonFields,
  secondPersonFault,
  useSecondPersonTyped,
} from '../../../features/people/second-person-fields.tsx'
import { call } from '../../../lib/api-client.ts'
import { clockTime, money } from '../../../lib/format.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { NumberField } from '../../../ui/number-field.tsx'
import type { TypedFigure } from '../../../ui/number-text.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { odometerFault, odometerRead } from '../odometer.ts'
import { useShopClock } from '../shop-clock.ts'
import { ClockQuestions } from './clock-questions.tsx'
import type { OrderPart } from './order-part.ts'

/** Payment, the sealed report, and the keys. */
export function ReportPart({ order }: OrderPart) {
  const { state } = order
  const clock = useShopClock()
  if (state.diagnosis?.confirmed == null) return null
  return (
    <Section title="Report" id="report">
      <div className="stack">
        {state.reports.length === 0 ? (
          <>
            <ClockQuestions order={order} />
            <Payment order={order} />
            <SealReport order={order} />
          </>
        ) : null}
        {state.reports.map((report) => (
          <p key={report.written.entryId}>
            <a
              href={`/api/orders/${order.orderId}/reports/${encodeURIComponent(report.reportNumber ?? '')}`}
              download={`report-${report.reportNumber}.pdf`}
            >
              Sealed report {report.reportNumber} (PDF)
            </a>{' '}
            <span className="quiet">sealed at {clockTime(report.written.writtenAt, clock)}</span>
          </p>
        ))}
        {state.reports.length > 0 && state.handedBack === null ? <HandBack order={order} /> : null}
        {state.handedBack === null ? null : (
          <p>Handed back at {clockTime(state.handedBack.written.writtenAt, clock)}.</p>
        )}
      </div>
    </Section>
  )
}

function Payment({ order }: OrderPart) {
  const write = useWriteEntries(order.orderId)
  const owed = owedCents(order.state, orderMoney(order))
  if (owed === null) return <p className="quiet">What is owed is not shown here.</p>
  if (owed <= 0) return null
  const pay = (method: 'cash' | 'card' | 'check' | 'account') => {
    const amount = moneySide({ amountCents: owed })
    write.mutate({
      entries: [draftEntry(order.orderId, 'payment.noted', { money: amount.digest, method })],
      sides: [amount],
    })
  }
  return (
    <div>
      <p>
        Authorized and not yet paid: <strong>{money(owed)}</strong>
      </p>
      <div className="row">
        {(['card', 'cash', 'check', 'account'] as const).map((method) => (
          <Button key={method} busy={write.isPending} onClick={() => pay(method)}>
            Paid by {method === 'account' ? 'account' : method}
          </Button>
        ))}
      </div>
      {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
    </div>
  )
}

function SealReport({ order }: OrderPart) {
  const client = useQueryClient()
  const [entryId] = useState(newId)
  const [first] = sealGate(order.state)
  const seal = useMutation({
    mutationFn: () => call(sealOrderReport, { params: { orderId: order.orderId }, body: { entryId } }),
    onSettled: () =>
      Promise.all([
        client.invalidateQueries({ queryKey: orderKey(order.orderId) }),
        client.invalidateQueries({ queryKey: ['floor'] }),
      ]),
  })
  return (
    <>
      {seal.isError ? <ProblemNotice problem={problemText(seal.error)} /> : null}
      <Button
        look="main"
        busy={seal.isPending}
        whyNot={first && gateWords(gates, first)}
        onClick={() => seal.mutate()}
      >
        {seal.isPending ? 'Composing and sealing' : 'Seal the report'}
      </Button>
    </>
  )
}

function HandBack({ order }: OrderPart) {
  const write = useWriteEntries(order.orderId)
  const [odometer, setOdometer] = useState<TypedFigure>(null)
  const agreed = useSecondPersonTyped()
  const unproven = proofOf(order.state).verdict === 'not-yet-proven'
  const wheelsOff = Object.values(order.state.work).some((work) => work.removed)
  return (
    <div className="stack">
      {wheelsOff ? (
        <p>Say: come back after 50 to 100 miles, free of charge, to have the torque checked.</p>
      ) : null}
      {unproven ? (
        <SecondPersonFields
          kind="order.handed_back"
          label="The cure is not proven yet: who agreed to the release?"
          typed={agreed}
        />
      ) : null}
      <NumberField label="Odometer at hand-back" unit="mi" value={odometer} onChange={setOdometer} />
      {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
      <Button
        look="main"
        busy={write.isPending}
        whyNot={(unproven ? secondPersonFault(agreed) : undefined) ?? odometerFault(odometer)}
        onClick={() =>
          write.mutate({
            entries: [
              draftEntry(order.orderId, 'order.handed_back', {
                odometer: odometerRead(odometer),
                lockingKeyReturned: null,
                retorqueAdvised: wheelsOff,
                signature: null,
                releaseAgreedBy: unproven ? namedBy(agreed) : null,
              }),
            ],
            ...(unproven ? { pin: agreed.pin } : {}),
          })
        }
      >
        Hand back the vehicle
      </Button>
    </div>
  )
}
