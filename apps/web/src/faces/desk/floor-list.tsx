import type { FloorRow } from '@bayledger/contract/orders'
import { useQuery } from '@tanstack/react-query'
import { Link } from 'react-router'
import { floorGroups, rowsOfGroup } from '../../features/floor/groups.ts'
import { floorQuery } from '../../features/floor/queries.ts'
import { patterns, printPath } from '../../lib/paths.ts'
import { problemText } from '../../lib/problem.ts'
import { ProblemNotice } from '../../ui/problem-notice.tsx'
import { FloorLine } from './floor-line.tsx'
import './floor-list.css'

/** Open orders by whose move it is; each says in a sentence what it waits for, and for how long. */
export function FloorList() {
  const floor = useQuery(floorQuery)
  if (floor.isError && floor.data === undefined)
    return <ProblemNotice problem={problemText(floor.error)} onRetry={() => void floor.refetch()} />
  const rows = floor.data?.rows ?? []
  const finished = rows.filter((row) => !row.isOpen)
  return (
    <>
      {floorGroups.map(({ title, movers }) => (
        <FloorGroup
          key={title}
          title={title}
          rows={rowsOfGroup(rows, movers)}
          asOf={floor.data?.asOf ?? ''}
        />
      ))}
      {finished.length === 0 ? null : <FloorGroup title="Finished today" rows={finished} asOf="" />}
      {floor.data !== undefined && rows.length === 0 ? <p>No order is open.</p> : null}
      <p className="floor-other">
        <Link to={patterns.wall}>Show it on the wall</Link> <Link to={printPath('floor')}>Print it</Link>
      </p>
    </>
  )
}

function FloorGroup({ title, rows, asOf }: { title: string; rows: readonly FloorRow[]; asOf: string }) {
  if (rows.length === 0) return null
  return (
    <section className="floor-group" aria-label={title}>
      <h3>
        {title} <span className="quiet">{rows.length}</span>
      </h3>
      <ul>
        {rows.map((row) => (
          <FloorLine key={row.orderId} row={row} asOf={asOf} />
        ))}
      </ul>
    </section>
  )
}
