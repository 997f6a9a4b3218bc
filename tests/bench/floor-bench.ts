import { listFloorRows } from '../../apps/api/src/features/floor/store.ts'
import { shopId } from '../../prisma/seeds/demo/places.ts'
import { interleave } from './interleave.ts'
import type { RunningShop } from './running-shop.ts'
import type { Line } from './table.ts'

/** Reading the floor list over HTTP against its statement alone. */
export const benchFloor = async (shop: RunningShop): Promise<Line[]> => {
  const [desk] = await shop.desks(1)
  if (!desk) throw new Error('no desk')
  const asked = {
    locationId: null,
    endedAfter: new Date(Date.now() - 12 * 3_600_000),
    orderIds: null,
    after: null,
  }
  const floor = await interleave(
    () => desk.call('GET', '/api/floor'),
    () => listFloorRows(shop.pool, shopId, asked),
    { blocks: 15, block: 20, seconds: 8 },
  )
  const list = { what: 'GET /api/floor', against: 'its statement alone', ...floor }
  return [
    { ...list, name: 'floor.read.p50.ratio', of: 'p50', goal: 8 },
    { ...list, name: null, of: 'p99', goal: 5 },
  ]
}
