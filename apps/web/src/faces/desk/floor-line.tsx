import type { FloorRow } from '@bayledger/contract/orders'
import { NavLink } from 'react-router'
import { floorMarks } from '../../features/floor/floor-marks.ts'
import { rowTimes } from '../../features/floor/ready-words.ts'
import { untilNamed } from '../../features/floor/until-words.ts'
import { useStaffNames } from '../../features/people/queries.ts'
import { ageMinutes, clockTimeOrDay, minutes } from '../../lib/format.ts'
import { deskOrderPath } from '../../lib/paths.ts'
import { useShopClock } from './shop-clock.ts'
import './floor-line.css'

/** One vehicle in two lines: who and which, then what it waits for and by when. A finished one has a single line. */
export function FloorLine({ row, asOf }: { row: FloorRow; asOf: string }) {
  const clock = useShopClock()
  const nameOf = useStaffNames()
  const marks = floorMarks(row, asOf)
  const [first, ...others] = row.moves
  const { ready, due, isLate } = rowTimes(row, asOf, clock)
  const said = (move: FloorRow['moves'][number]) =>
    untilNamed(move.words, due?.startsWith('until') ? null : move.until, (at) =>
      clockTimeOrDay(at, asOf || at, clock),
    )
  // That a promise slips begins at no time of its own.
  const since = row.moves.find((move) => move.since !== null)?.since
  const who = row.assignedTo === null ? null : nameOf(row.assignedTo).split(' ')[0]
  const vehicle = [row.plate, row.vehicleDescription, who].filter(Boolean).join(' · ')
  return (
    <li>
      <NavLink to={deskOrderPath(row.orderId)} className="floor-line">
        <span className="floor-row">
          <span className="floor-cut">
            <strong>{row.customerName}</strong> <span className="quiet">{vehicle}</span>
          </span>
          {marks.care.map((word) => (
            <span key={word} className="floor-care">
              {word}
            </span>
          ))}
          {marks.wheel === null || marks.wheel.isFirst ? null : (
            <span className="floor-wheel-off">{marks.wheel.words}</span>
          )}
          {marks.waitsHere ? <span className="floor-here">waits here</span> : null}
          <span className="floor-age">
            {since && row.isOpen && asOf ? minutes(ageMinutes(since, asOf)) : row.number}
          </span>
        </span>
        {row.isOpen ? (
          <span className="floor-row">
            <span className="floor-cut">
              <span className={marks.wheel?.isFirst ? 'floor-wheel-off' : undefined}>
                {first && said(first)}
              </span>
              {others.map((move) => (
                <span key={`${move.code} ${move.wheel}`}> Also: {said(move)}</span>
              ))}
            </span>
            {ready === null ? null : <span className="floor-promise">{ready}</span>}
            {due === null ? null : (
              <span className={isLate ? 'floor-promise floor-late' : 'floor-promise'}>{due}</span>
            )}
          </span>
        ) : null}
      </NavLink>
    </li>
  )
}
