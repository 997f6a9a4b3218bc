import { listTorquedWheels } from '@bayledger/contract/instruments'
import { telephoneWords } from '@bayledger/wording/telephone'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { Link } from 'react-router'
import { call } from '../../../lib/api-client.ts'
import { type Clock, clockTime, day } from '../../../lib/format.ts'
import { deskOrderPath } from '../../../lib/paths.ts'
import { problemText } from '../../../lib/problem.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { RowField } from '../../../ui/record/row-field.tsx'
import { Section } from '../../../ui/section.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'

type TorquedWheelsProps = {
  instrumentId: string
  code: string
  /** The last day on which it was known to be good; `null` if nobody knows. */
  goodOn: string | null
  clock: Clock
}

/** A wrench was found out of calibration: every wheel that counts on it, and whom to call. */
export function TorquedWheels({ instrumentId, code, goodOn, clock }: TorquedWheelsProps) {
  const [since, setSince] = useState(goodOn ?? '')
  const isDay = /^\d{4}-\d{2}-\d{2}$/.test(since)
  const listed = useQuery({
    queryKey: ['torqued-wheels', instrumentId, since],
    queryFn: ({ signal }) =>
      call(listTorquedWheels, { params: { id: instrumentId }, query: { since }, signal }),
    enabled: isDay,
  })
  const wheels = listed.data?.wheels
  const now = new Date().toISOString()
  return (
    <Section title={`Every wheel torqued with ${code}`}>
      <div className="stack">
        <p>
          If {code} is found out of calibration, put it in quarantine above, then decide for each of these
          wheels whether the vehicle comes back to be torqued again. The vehicle maker’s figures govern.
        </p>
        <RowField
          row={{
            kind: 'day',
            key: 'since',
            label: 'Torqued on this day or since',
            hint: 'The day on which the wrench was last known to be good.',
          }}
          value={since}
          onChange={setSince}
        />
        {listed.isError ? <ProblemNotice problem={problemText(listed.error)} /> : null}
        <StatusLine>
          {wheels === undefined ? (isDay ? 'Reading the wheels.' : null) : counted(wheels)}
        </StatusLine>
        {wheels === undefined || wheels.length === 0 ? null : (
          <table className="record-table">
            <thead>
              <tr>
                <th scope="col">Order</th>
                <th scope="col">Wheel</th>
                <th scope="col">Last torqued with it</th>
                <th scope="col">Vehicle</th>
                <th scope="col">Owner</th>
              </tr>
            </thead>
            <tbody>
              {wheels.map((one) => (
                <tr key={`${one.orderId} ${one.wheel}`}>
                  <th scope="row">
                    <Link to={deskOrderPath(one.orderId)}>{one.orderNumber}</Link>
                  </th>
                  <td>{one.wheel}</td>
                  <td>
                    {day(one.torquedAt, now, clock)}, {clockTime(one.torquedAt, clock)}, {one.by},{' '}
                    {one.clicks} clicks
                  </td>
                  <td>
                    {one.vehicle}
                    {one.plate === null ? null : <> · {one.plate}</>}
                  </td>
                  <td>
                    {one.customer}: {callWords(one)}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
      </div>
    </Section>
  )
}

const counted = (wheels: readonly { orderId: string }[]): string => {
  if (wheels.length === 0) return 'No wheel was torqued with it since that day.'
  const orders = new Set(wheels.map(({ orderId }) => orderId)).size
  return `${wheels.length} ${wheels.length === 1 ? 'wheel' : 'wheels'} of ${orders} ${orders === 1 ? 'order' : 'orders'}.`
}

const callWords = ({ mayCall, telephone }: { mayCall: boolean; telephone: string | null }): string => {
  if (!mayCall) return 'has not agreed to be called'
  return telephone === null ? 'may be called, no number known' : `may be called, ${telephoneWords(telephone)}`
}
