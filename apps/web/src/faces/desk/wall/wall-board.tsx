import { floorMarks } from '../../../features/floor/floor-marks.ts'
import { type Clock, clockTimeOrDay } from '../../../lib/format.ts'
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
        const { isLate } = floorMarks(row, asOf)
        return (
          <li key={row.orderId}>
            <div className="wall-line">
              <span className="wall-cut">{wallName(row)}</span>
              {row.promisedAt === null ? null : (
                <span className={isLate ? 'wall-late' : undefined}>
                  {isLate ? 'late, ' : 'by '}
                  {clockTimeOrDay(row.promisedAt, asOf, clock)}
                </span>
              )}
            </div>
            <p className="wall-now">
              {group}: {row.moves[0]?.words}
            </p>
          </li>
        )
      })}
    </ul>
  )
}
