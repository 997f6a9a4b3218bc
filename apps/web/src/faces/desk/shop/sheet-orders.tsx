import { listSheetOrders } from '@bayledger/contract/sheets'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import { messages as english } from '@bayledger/wording/en/messages'
import { messages as spanish } from '@bayledger/wording/es/messages'
import { telephoneWords } from '@bayledger/wording/telephone'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { Link } from 'react-router'
import { call } from '../../../lib/api-client.ts'
import { type Clock, day } from '../../../lib/format.ts'
import { deskOrderPath } from '../../../lib/paths.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'

/** The orders that used a sheet, each with its version, and what to tell the vehicles' owners if a figure was wrong. */
export function SheetOrders({ sheet, clock }: { sheet: SpecificationSheet; clock: Clock }) {
  const [isAsked, setAsked] = useState(false)
  const listed = useQuery({
    queryKey: ['sheet-orders', sheet.sheetId],
    queryFn: ({ signal }) => call(listSheetOrders, { params: { sheetId: sheet.sheetId }, signal }),
    enabled: isAsked,
  })
  const orders = listed.data?.orders
  const now = new Date().toISOString()
  return (
    <Section title="If a figure was wrong">
      <div className="stack">
        <p>An order keeps the version of the sheet that it used. These are the vehicles to look at again.</p>
        {isAsked ? null : (
          <Button onClick={() => setAsked(true)}>List the orders that used this sheet</Button>
        )}
        {listed.isError ? <ProblemNotice problem={problemText(listed.error)} /> : null}
        {!isAsked ? null : (
          <StatusLine>
            {orders === undefined
              ? 'Reading the orders.'
              : orders.length === 0
                ? 'No order has used this sheet.'
                : `${orders.length === 1 ? '1 order has' : `${orders.length} orders have`} used this sheet.`}
          </StatusLine>
        )}
        {orders === undefined || orders.length === 0 ? null : (
          <>
            <table className="record-table">
              <thead>
                <tr>
                  <th scope="col">Order</th>
                  <th scope="col">Version</th>
                  <th scope="col">Vehicle</th>
                  <th scope="col">Owner</th>
                </tr>
              </thead>
              <tbody>
                {orders.map((order) => (
                  <tr key={order.orderId}>
                    <td>
                      <Link to={deskOrderPath(order.orderId)}>{order.number}</Link>,{' '}
                      {day(order.openedAt, now, clock)}
                    </td>
                    <td>{order.version}</td>
                    <td>{order.vehicle}</td>
                    <td>
                      {order.customer}
                      {order.phone === null ? '' : `, ${telephoneWords(order.phone)}`}
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
            <p>What to tell their owners, in English or in Spanish:</p>
            {[english, spanish].map(({ wrongFigure }, index) => (
              <blockquote key={wrongFigure(sheet.name)} lang={index === 0 ? 'en' : 'es'}>
                {wrongFigure(sheet.name)}
              </blockquote>
            ))}
          </>
        )}
      </div>
    </Section>
  )
}
