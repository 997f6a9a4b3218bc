import { getChecklist } from '@bayledger/contract/checklist'
import { queryOptions, useQuery } from '@tanstack/react-query'
import { Link } from 'react-router'
import { call } from '../../../lib/api-client.ts'
import { clockTimeOrDay } from '../../../lib/format.ts'
import { patterns } from '../../../lib/paths.ts'
import { problemText } from '../../../lib/problem.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Sentence, StatusLine } from '../../../ui/sentence.tsx'
import { useShopClock } from '../shop-clock.ts'
import { type ChecklistItem, checklistItems } from './checklist-items.ts'
import './checklist.css'

const checklistQuery = queryOptions({
  queryKey: ['checklist'],
  queryFn: ({ signal }) => call(getChecklist, { signal }),
})

/** What the left list says of it. */
export const useChecklistNeeds = (): string | null => {
  const list = useQuery(checklistQuery).data
  const items = list === undefined ? [] : checklistItems(list, (instant) => instant)
  const left = items.filter(({ isThere }) => !isThere).length
  return left === 0 ? null : `${left} of ${items.length} left`
}

/** What a new shop still needs. It is computed from what is there, so it can be left and taken up again at any time. */
export function ChecklistPage() {
  const list = useQuery(checklistQuery)
  const clock = useShopClock()
  if (list.isError)
    return <ProblemNotice problem={problemText(list.error)} onRetry={() => void list.refetch()} />
  if (list.data === undefined) return <StatusLine>Looking what is there.</StatusLine>
  const now = new Date().toISOString()
  const items = checklistItems(list.data, (instant) => clockTimeOrDay(instant, now, clock))
  const left = items.filter(({ isThere }) => !isThere).length
  return (
    <div className="stack">
      <Sentence>
        {left === 0
          ? 'All of it is there.'
          : `${left} of ${items.length} left. Leave this page whenever you like. It is up to date each time you open it.`}
      </Sentence>
      <ul className="checklist">
        {items.map((item) => (
          <Item key={item.key} item={item} />
        ))}
      </ul>
      <p>
        {list.data.hasOrders ? null : 'The desk can take in the first car now. '}
        <Link to={patterns.writeUp}>Write up a complaint</Link>
      </p>
    </div>
  )
}

function Item({ item }: { item: ChecklistItem }) {
  return (
    <li data-there={item.isThere}>
      <h2>
        {item.title}: {item.isThere ? 'there' : 'not yet'}
      </h2>
      <p>Now: {item.now}.</p>
      {item.isThere ? null : <p>Without it: {item.without}</p>}
      <p>{'path' in item ? <Link to={item.path}>{item.linkWords}</Link> : item.doWords}</p>
    </li>
  )
}
