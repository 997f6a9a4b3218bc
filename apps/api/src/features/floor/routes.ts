import { listFloor } from '@bayledger/contract/orders'
import { type Binding, bind } from '../../http/binding.ts'
import { presentFloorRow } from './present.ts'
import { getFloorPage } from './service.ts'

export const floorRoutes: readonly Binding[] = [
  bind(listFloor)(async ({ deps, query }) => {
    const { asOf, rows, next, ...beside } = await getFloorPage(deps, query)
    return { status: 200, body: { asOf, rows: rows.map((row) => presentFloorRow(row, asOf, beside)), next } }
  }),
]
