import { floorMarks } from '../../../features/floor/floor-marks.ts'
import { rowTimes } from '../../../features/floor/ready-words.ts'
import type { Clock } from '../../../lib/format.ts'
import { type WallRow, wallName } from './wall-rows.ts'
import './wall.css'

type BoardProps = {
  readonly rows: readonly WallRow[]
  readonly asOf: string
  readonly clock: Clock
}

/** One screen of vehicles: which it is, by when, and what it waits for. No names and no telephone numbers. */
export function WallBoard({ rows, asOf, clock }: BoardProps) {
  if (rows.length === 0) return <p>No order is open.</p>
  return (
    <ul>
      {rows.map(({ row, group }) => {
        const { due, isLate } = rowTimes(row, asOf, clock)
        const { wheel } = floorMarks(row, asOf)
        return (
          <li key={row.orderId}>
            <div className="wall-line">
              <span className="wall-cut">{wallName(row)}</span>
              {due === null ? null : <span className={isLate ? 'wall-late' : undefined}>{due}</span>}
            </div>
            <p className="wall-now">
              {group}: {row.moves[0]?.words}
              {wheel === null || wheel.isFirst ? null : ` Also: ${wheel.words}.`}
            </p>
          </li>
        )
      })}
    </ul>
  )
}
