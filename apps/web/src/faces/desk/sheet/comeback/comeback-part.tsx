import type { EarlierWork } from '@bayledger/reckoning/money/line-cover'
import { comebackCauses } from '@bayledger/wording/en/comeback-causes'
import { english } from '@bayledger/wording/en/english'
import { wheelList } from '@bayledger/wording/wheels'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { Link } from 'react-router'
import { useStaffNames } from '../../../../features/people/queries.ts'
import { deskOrderPath } from '../../../../lib/paths.ts'
import { problemText } from '../../../../lib/problem.ts'
import { Button } from '../../../../ui/button.tsx'
import { ProblemNotice } from '../../../../ui/problem-notice.tsx'
import { Line, Lines, Section } from '../../../../ui/section.tsx'
import type { OrderPart } from '../order-part.ts'
import { CauseForm } from './cause-form.tsx'
import { comebackQuery } from './comeback-query.ts'

/** What the earlier orders did, and why the vehicle came back. */
export function ComebackPart({ order }: OrderPart) {
  const { comeback, opened, reports, ended } = order.state
  const [isCorrecting, setCorrecting] = useState(false)
  const facts = useQuery(comebackQuery(order))
  const nameOf = useStaffNames()
  const by = comeback?.written.by
  const isOpen = reports.length === 0 && ended === null
  return (
    <Section
      title="Comeback"
      id="comeback"
      note={comeback === null ? 'the cause is not recorded yet' : comebackCauses[comeback.cause]}
    >
      <div className="stack">
        <Lines>
          {(facts.data?.comeback?.works ?? []).map((work) => (
            <Line
              key={work.orderNumber}
              name={`${work.orderNumber}, ${english.lineCovers.day(work.done.day)}`}
            >
              {workWords(work)}
            </Line>
          ))}
          {comeback === null ? null : (
            <Line name="Cause">
              {comebackCauses[comeback.cause]}
              {comeback.words === null ? '' : `: ${order.personalText(comeback.words)}`}
              {by?.kind === 'staff' ? `, recorded by ${nameOf(by.staffId)}` : ''}
            </Line>
          )}
        </Lines>
        {facts.isError ? (
          <ProblemNotice problem={problemText(facts.error)} onRetry={() => void facts.refetch()} />
        ) : null}
        {opened?.comebackOf ? (
          <Link to={deskOrderPath(opened.comebackOf)}>Open the earlier order</Link>
        ) : null}
        {!isOpen ? null : comeback === null || isCorrecting ? (
          <CauseForm order={order} onSaved={() => setCorrecting(false)} />
        ) : (
          <div className="row">
            <Button onClick={() => setCorrecting(true)}>Correct the cause</Button>
          </div>
        )}
      </div>
    </Section>
  )
}

const workWords = ({ wheels, sensors, relearned }: EarlierWork): string => {
  const said = [
    ...(sensors.length === 0 ? [] : [`new sensor: ${wheelList(english.wheels, sensors)}`]),
    ...(wheels.length === 0 ? [] : [`worked on: ${wheelList(english.wheels, wheels)}`]),
    ...(relearned ? ['relearn'] : []),
  ]
  return said.length === 0 ? 'no work on a wheel' : said.join(' · ')
}
