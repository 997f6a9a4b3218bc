import type { FloorRow } from '@bayledger/contract/orders'
import { floorGroups, rowsOfGroup } from '../../../features/floor/groups.ts'

/** So many vehicles of three lines each fit below the head on a screen of 16 to 9. */
export const vehiclesOnWall = 3

export type WallRow = { readonly row: FloorRow; readonly group: string }

/** The open orders in the order of the floor list, in portions of one screen. */
export const wallPages = (rows: readonly FloorRow[]): readonly (readonly WallRow[])[] => {
  const all = floorGroups.flatMap(({ title, movers }) =>
    rowsOfGroup(rows, movers).map((row) => ({ row, group: title })),
  )
  return Array.from({ length: Math.ceil(all.length / vehiclesOnWall) }, (_, page) =>
    all.slice(page * vehiclesOnWall, (page + 1) * vehiclesOnWall),
  )
}

/** What everyone may read of a vehicle from the street: the order's number and the end of its plate, never who brought it. */
export const wallName = ({ number, plate, vehicleDescription, color }: FloorRow): string => {
  const tail = plate === null ? null : `…${plate.replaceAll(/[^\p{L}\p{N}]/gu, '').slice(-3)}`
  return [number, tail, vehicleDescription, color].filter(Boolean).join(' · ')
}
