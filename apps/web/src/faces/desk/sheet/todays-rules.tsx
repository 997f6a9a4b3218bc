import { compareWithTodaysRules, type RulesComparison } from '@bayledger/contract/diagnoses'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { call } from '../../../lib/api-client.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'

/** The findings above were computed by the rules of their day; this shows on request what today's rules would say. */
export function TodaysRules({ orderId, ruleSet }: { orderId: string; ruleSet: string }) {
  const [asked, setAsked] = useState(false)
  const reply = useQuery({
    queryKey: ['orders', orderId, 'todays-rules'],
    queryFn: ({ signal }) => call(compareWithTodaysRules, { params: { orderId }, signal }),
    enabled: asked,
  })
  if (!asked)
    return (
      <p className="row">
        <span className="quiet">Computed by rule set {ruleSet}.</span>
        <Button onClick={() => setAsked(true)}>Compare with today’s rules</Button>
      </p>
    )
  if (reply.isError)
    return <ProblemNotice problem={problemText(reply.error)} onRetry={() => void reply.refetch()} />
  const comparison = reply.data?.comparison
  if (!comparison) return <StatusLine>Computing …</StatusLine>
  return (
    <div role="status">
      <p>{verdictWords(comparison)}</p>
      <ul>
        {comparison.differences.map((difference) => (
          <li key={difference}>{difference}</li>
        ))}
      </ul>
    </div>
  )
}

const verdictWords = ({ issuedByRuleSet, todaysRuleSet, differences }: RulesComparison): string => {
  const sets =
    issuedByRuleSet === todaysRuleSet
      ? `These findings were computed by rule set ${issuedByRuleSet}, which is today’s.`
      : `These findings were computed by rule set ${issuedByRuleSet}; today’s is rule set ${todaysRuleSet}.`
  return differences.length === 0
    ? `${sets} From the same evidence today’s rules say the same: nothing differs.`
    : `${sets} From the same evidence today’s rules would say otherwise, which changes nothing on this order:`
}
