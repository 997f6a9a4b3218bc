import type { FloorRow } from '@bayledger/contract/orders'
import { NavLink } from 'react-router'
import { floorMarks } from '../../features/floor/floor-marks.ts'
import { readyWords } from '../../features/floor/ready-words.ts'
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
  // Its sentence says how late it will be, and needs the room.
  const slips = row.moves.some(({ code }) => code === 'promise-slips')
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
          {marks.waitsHere ? <span className="floor-here">waits here</span> : null}
          <span className="floor-age">
            {first?.since && row.isOpen && asOf ? minutes(ageMinutes(first.since, asOf)) : row.number}
          </span>
        </span>
        {row.isOpen ? (
          <span className="floor-row">
            <span className="floor-cut">
              <span className={marks.wheelOff ? 'floor-wheel-off' : undefined}>{first?.words}</span>
              {others.map((move) => (
                <span key={`${move.code} ${move.wheel}`}> Also: {move.words}</span>
              ))}
            </span>
            {row.ready === null || slips ? null : (
              <span className="floor-promise">{readyWords(row.ready, asOf, clock)}</span>
            )}
            {row.promisedAt === null ? null : (
              <span className={marks.isLate ? 'floor-promise floor-late' : 'floor-promise'}>
                {marks.isLate ? 'late, ' : 'by '}
                {clockTimeOrDay(row.promisedAt, asOf || row.promisedAt, clock)}
              </span>
            )}
          </span>
        ) : null}
      </NavLink>
    </li>
  )
}
