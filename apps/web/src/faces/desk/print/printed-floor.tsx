import { useQuery } from '@tanstack/react-query'
import { floorGroups, rowsOfGroup } from '../../../features/floor/groups.ts'
import { floorQuery } from '../../../features/floor/queries.ts'
import { rowTimes } from '../../../features/floor/ready-words.ts'
import { untilNamed } from '../../../features/floor/until-words.ts'
import { clockTime, clockTimeOrDay, day } from '../../../lib/format.ts'
import { useShopClock } from '../shop-clock.ts'

/** The floor list on paper, for when the power or the network is out. */
export function PrintedFloor() {
  const clock = useShopClock()
  const { data } = useQuery(floorQuery)
  if (data === undefined) return null
  const when = (instant: string) => clockTimeOrDay(instant, data.asOf, clock)
  return (
    <>
      <h1>
        Floor list, {day(data.asOf, data.asOf, clock)}, {clockTime(data.asOf, clock)}
      </h1>
      {floorGroups.map(({ title, movers }) => {
        const rows = rowsOfGroup(data.rows, movers)
        return rows.length === 0 ? null : (
          <section key={title}>
            <h2>
              {title} ({rows.length})
            </h2>
            <table className="paper-floor">
              <tbody>
                {rows.map((row) => {
                  const { ready, due } = rowTimes(row, data.asOf, clock)
                  return (
                    <tr key={row.orderId}>
                      <th scope="row">{row.number}</th>
                      <td>
                        {row.customerName}
                        <br />
                        {[row.plate, row.vehicleDescription].filter(Boolean).join(' · ')}
                      </td>
                      <td>{row.moves.map(({ words, until }) => untilNamed(words, until, when)).join(' ')}</td>
                      <td>
                        {[ready, due ?? 'no promise', row.waitsHere ? 'waits here' : null]
                          .filter((part) => part !== null)
                          .join(', ')}
                      </td>
                    </tr>
                  )
                })}
              </tbody>
            </table>
          </section>
        )
      })}
    </>
  )
}
