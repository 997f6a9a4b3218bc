import type { VehicleContent } from '@bayledger/contract/vehicles'
import type { Prisma } from '@bayledger/db/generated/client'

export type Tx = Pick<Prisma.TransactionClient, 'vehicle'>

/** With whose record the owner's was merged into. */
const withOwner = { customer: { select: { survivorId: true } } } as const

export const findVehicle = (tx: Tx, shopId: string, id: string) =>
  tx.vehicle.findUnique({ where: { shopId_id: { shopId, id } }, include: withOwner })

/** The record that this one is now: its own, or the one that it was merged into. */
export const findSurvivingVehicle = async (tx: Tx, shopId: string, id: string) => {
  const row = await findVehicle(tx, shopId, id)
  return row?.survivorId ? findVehicle(tx, shopId, row.survivorId) : row
}

export type VehicleRow = NonNullable<Awaited<ReturnType<typeof findVehicle>>>

/** Of a customer with all of their records. */
export const listVehiclesOf = (tx: Tx, shopId: string, customerIds: readonly string[]) =>
  tx.vehicle.findMany({
    where: { shopId, customerId: { in: [...customerIds] }, survivorId: null },
    include: withOwner,
    orderBy: [{ description: 'asc' }, { id: 'asc' }],
  })

export const insertVehicle = (tx: Tx, shopId: string, id: string, content: VehicleContent, at: Date) =>
  tx.vehicle.create({
    data: { shopId, id, ...content, createdAt: at, updatedAt: at },
    include: withOwner,
  })

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
    where: { shopId, id, version, survivorId: null },
    data: { ...content, version: { increment: 1 }, updatedAt: at },
    include: withOwner,
  })
  return row ?? null
}
