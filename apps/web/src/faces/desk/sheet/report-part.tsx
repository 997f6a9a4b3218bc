import { sealOrderReport } from '@bayledger/contract/reports'
import { proofOf, sealGate } from '@bayledger/ledger/questions/gates'
import { beforeLeaving } from '@bayledger/ledger/questions/odometer'
import { gates } from '@bayledger/wording/en/gates'
import { gateWords } from '@bayledger/wording/gates'
import { useMutation, useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { draftEntry, newId } from '../../../features/ledger/draft-entry.ts'
import { odometerWords } from '../../../features/ledger/odometer-words.ts'
import { orderKey } from '../../../features/ledger/order-query.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import {
  namedBy,
  SecondPersonFields,
  secondPersonFault,
  useSecondPersonTyped,
} from '../../../features/people/second-person-fields.tsx'
import { MissingPhotos } from '../../../features/photos/missing-photos.tsx'
import { call } from '../../../lib/api-client.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import type { TypedFigure } from '../../../ui/number-text.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { comparedWith, odometerFault, odometerRead } from '../odometer.ts'
import { OdometerField } from '../odometer-field.tsx'
import { useTimes } from '../shop-clock.ts'
import { ClockQuestions, SettledClock } from './clock-questions.tsx'
import { handBackId } from './next-action.ts'
import type { OrderPart } from './order-part.ts'
import { PaymentPart } from './payment-part.tsx'

/** Payment, the sealed report, and the keys. */
export function ReportPart({ order }: OrderPart) {
  const { state } = order
  const { at } = useTimes()
  if (state.diagnosis?.confirmed == null) return null
  return (
    <Section title="Report" id="report">
      <div className="stack">
        {state.reports.length === 0 ? <ClockQuestions order={order} /> : null}
        <SettledClock order={order} />
        <PaymentPart order={order} />
        {state.reports.length === 0 ? <SealReport order={order} /> : null}
        {state.reports.map((report) => (
          <p key={report.written.entryId}>
            <a
              href={`/api/orders/${order.orderId}/reports/${encodeURIComponent(report.reportNumber ?? '')}`}
              download={`report-${report.reportNumber}.pdf`}
            >
              Sealed report {report.reportNumber} (PDF)
            </a>{' '}
            <span className="quiet">sealed {at(report.written.writtenAt)}</span>
          </p>
        ))}
        {state.reports.length > 0 && state.handedBack === null ? <HandBack order={order} /> : null}
        {state.handedBack === null ? null : (
          <p>
            Handed back {at(state.handedBack.written.writtenAt)}
            {state.handedBack.odometer === null
              ? ''
              : `, at ${odometerWords(state.handedBack.odometer, state.handedBack.odometerConfirmed)}`}
            .
          </p>
        )}
        {state.reports.length > 0 ? <SealReport key={state.reports.length} order={order} /> : null}
      </div>
    </Section>
  )
}

/** The first report, or an addendum for what came since. */
function SealReport({ order }: OrderPart) {
  const client = useQueryClient()
  const [entryId] = useState(newId)
  const isFirst = order.state.reports.length === 0
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
      <MissingPhotos order={order} />
      {isFirst ? null : (
        <p className="quiet">
          A payment, a late photo, a corrected name or another language goes into an addendum. It takes the
          place of the report before it.
        </p>
      )}
      <Button
        look={isFirst ? 'main' : 'plain'}
        busy={seal.isPending}
        whyNot={first && gateWords(gates, first)}
        onClick={() => seal.mutate()}
      >
        {seal.isPending ? 'Composing and sealing' : isFirst ? 'Seal the report' : 'Seal an addendum'}
      </Button>
    </>
  )
}

function HandBack({ order }: OrderPart) {
  const write = useWriteEntries(order.orderId)
  const [odometer, setOdometer] = useState<TypedFigure>(null)
  const [twice, setTwice] = useState(false)
  const agreed = useSecondPersonTyped()
  const judge = comparedWith(beforeLeaving(order.state, order.earlierOdometer, new Date().toISOString()))
  const unproven = proofOf(order.state).verdict === 'not-yet-proven'
  const wheelsOff = Object.values(order.state.work).some((work) => work.removed)
  return (
    <div id={handBackId} className="stack">
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
      <OdometerField
        label="Odometer at hand-back"
        value={odometer}
        judge={judge}
        confirmed={twice}
        onChange={setOdometer}
        onConfirm={setTwice}
      />
      {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
      <Button
        look="main"
        busy={write.isPending}
        whyNot={(unproven ? secondPersonFault(agreed) : undefined) ?? odometerFault(odometer, judge, twice)}
        onClick={() =>
          write.mutate({
            entries: [
              draftEntry(order.orderId, 'order.handed_back', {
                odometer: odometerRead(odometer),
                odometerConfirmed: twice,
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
