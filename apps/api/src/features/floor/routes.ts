import { listFloor } from '@bayledger/contract/orders'
import { fromCursor, toCursor } from '../../core/cursor.ts'
import type { Deps } from '../../deps.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { presentFloorRow } from './present.ts'
import { listFloorRows, pageSize } from './store.ts'

/** How long an order that ended stays on the list: a working day. */
const endedHours = 12

export const floorRoutes = (deps: Deps): Binding[] => [
  bind(listFloor)(async ({ query }) => {
    const now = deps.clock.now()
    const place = fromCursor(query.cursor, 2)
    const rows = await listFloorRows(deps.pool, deps.shopId, {
      locationId: query.locationId ?? null,
      endedAfter: new Date(now.getTime() - endedHours * 3_600_000),
      after: place ? { openedAt: place[0] ?? '', orderId: place[1] ?? '' } : null,
    })
    const page = rows.slice(0, pageSize)
    const last = page.at(-1)
    const asOf = now.toISOString()
    return {
      status: 200,
      body: {
        asOf,
        rows: page.map((row) => presentFloorRow(row, asOf)),
        next: rows.length > pageSize && last ? toCursor([last.openedAt.toISOString(), last.orderId]) : null,
      },
    }
  }),
]
