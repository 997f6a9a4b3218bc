import type { FloorRow } from '@bayledger/contract/orders'
import { useQuery } from '@tanstack/react-query'
import { NavLink } from 'react-router'
import { floorGroups, rowsOfGroup } from '../../features/floor/groups.ts'
import { floorQuery } from '../../features/floor/queries.ts'
import { useStaffNames } from '../../features/people/queries.ts'
import { ageMinutes, clockTime, minutes } from '../../lib/format.ts'
import { deskOrderPath } from '../../lib/paths.ts'
import { problemText } from '../../lib/problem.ts'
import { ProblemNotice } from '../../ui/problem-notice.tsx'
import { useShopClock } from './shop-clock.ts'
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

function FloorLine({ row, asOf }: { row: FloorRow; asOf: string }) {
  const clock = useShopClock()
  const nameOf = useStaffNames()
  const [first, ...others] = row.moves
  const facts = [
    row.plate,
    row.waitsHere ? 'waiting here' : null,
    row.promisedAt === null ? null : `promised ${clockTime(row.promisedAt, clock)}`,
    row.assignedTo === null ? null : (nameOf(row.assignedTo).split(' ')[0] ?? null),
  ].filter((fact) => fact !== null)
  return (
    <li>
      <NavLink to={deskOrderPath(row.orderId)} className="floor-line">
        <span className="floor-who">
          <strong>{row.customerName}</strong>
          <span className="floor-age">
            {first?.since && asOf ? minutes(ageMinutes(first.since, asOf)) : row.number}
          </span>
        </span>
        <span className="quiet">
          {row.vehicleDescription}
          {facts.length === 0 ? '' : ` · ${facts.join(' · ')}`}
        </span>
        <span>{first?.words ?? 'Finished.'}</span>
        {others.map((move) => (
          <span key={`${move.code} ${move.wheel}`}>Also: {move.words}</span>
        ))}
      </NavLink>
    </li>
  )
}
