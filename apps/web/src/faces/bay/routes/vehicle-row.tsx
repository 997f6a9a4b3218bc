import type { FloorRow } from '@bayledger/contract/orders'
import { Link, useNavigate } from 'react-router'
import { useStaffNames } from '../../../features/people/queries.ts'
import { clockTimeOrDay } from '../../../lib/format.ts'
import { bayOrderPath } from '../../../lib/paths.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { bayMoves } from '../bay-rows.ts'
import { useRecord } from '../record/use-record.ts'
import { useBayClock } from '../session/signed-in.ts'

/** One vehicle: its plate, its description, its status. A tap opens it; taking it opens it too. */
export function VehicleRow({ row, staffId }: { row: FloorRow; staffId: string }) {
  const nameOf = useStaffNames()
  const clock = useBayClock()
  const navigate = useNavigate()
  const { record, busy, problem } = useRecord(row.orderId)
  const take = async () => {
    const taken = await record(
      'order.assigned',
      { staffId, bay: null },
      `take ${row.plate ?? row.number}`,
      null,
    )
    if (taken) navigate(bayOrderPath(row.orderId))
  }
  const moves = bayMoves(row)
  const said = moves.length > 0 ? moves : row.moves.slice(0, 1)
  const facts = [
    row.customerName,
    row.waitsHere ? 'waits here' : null,
    row.promisedAt === null
      ? null
      : `promised ${clockTimeOrDay(row.promisedAt, new Date().toISOString(), clock)}`,
    row.assignedTo === null ? null : row.assignedTo === staffId ? 'mine' : nameOf(row.assignedTo),
  ].filter((fact) => fact !== null)
  return (
    <li className="vehicle-row">
      <Link to={bayOrderPath(row.orderId)} className="vehicle-link">
        <span className="vehicle-row-plate exact">{row.plate ?? row.number}</span>
        <span className="vehicle-row-words">
          <strong>{row.vehicleDescription}</strong>
          {said.map((move) => (
            <span key={`${move.code} ${move.wheel}`} className="vehicle-row-sentence">
              {move.words}
            </span>
          ))}
          <span className="quiet">{facts.join(' · ')}</span>
        </span>
      </Link>
      {row.assignedTo === staffId ? null : (
        <Button busy={busy} aria-label={`Take it: ${row.plate ?? row.number}`} onClick={() => void take()}>
          Take it
        </Button>
      )}
      {problem === null ? null : <ProblemNotice problem={problemText(problem)} />}
    </li>
  )
}
