import type { VehicleContent } from '@bayledger/contract/vehicles'
import type { Prisma } from '@bayledger/db/generated/client'

export type Tx = Pick<Prisma.TransactionClient, 'vehicle'>

export const findVehicle = (tx: Tx, shopId: string, id: string) =>
  tx.vehicle.findUnique({ where: { shopId_id: { shopId, id } } })

export type VehicleRow = NonNullable<Awaited<ReturnType<typeof findVehicle>>>

export const listVehiclesOf = (tx: Tx, shopId: string, customerId: string) =>
  tx.vehicle.findMany({ where: { shopId, customerId }, orderBy: [{ description: 'asc' }, { id: 'asc' }] })

export const insertVehicle = (tx: Tx, shopId: string, id: string, content: VehicleContent, at: Date) =>
  tx.vehicle.create({ data: { shopId, id, ...content, createdAt: at, updatedAt: at } })

/** Writes only over the version that was read; `null` when someone was first, or there is none. */
export const updateVehicle = async (
  tx: Tx,
  shopId: string,
  id: string,
  version: number,
  content: VehicleContent,
  at: Date,
): Promise<VehicleRow | null> => {
  const [row] = await tx.vehicle.updateManyAndReturn({
    where: { shopId, id, version },
    data: { ...content, version: { increment: 1 }, updatedAt: at },
  })
  return row ?? null
}
