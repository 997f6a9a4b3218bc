import type { Deps } from '../../../deps.ts'

export type OpenSessionRow = {
  readonly id: string
  readonly kind: 'desk' | 'bay'
  readonly device: string | null
  readonly address: string | null
  readonly browser: string | null
  readonly createdAt: Date
  readonly lastSeenAt: Date
  readonly expiresAt: Date
}

/** The sessions of a person that nobody has ended, the newest first; those that were idle too long are among them. */
export const listSessionsNotEnded = async (
  { prisma, shopId }: Deps,
  staffId: string,
): Promise<OpenSessionRow[]> => {
  const rows = await prisma.session.findMany({
    where: { shopId, staffId, endedAt: null, staff: { active: true } },
    include: { device: true },
    orderBy: [{ createdAt: 'desc' }, { id: 'desc' }],
  })
  return rows
    .filter(({ device }) => device === null || device.revokedAt === null)
    .map(({ device, kind, ...row }) => ({
      ...row,
      // Held to the two by a constraint of the database.
      kind: kind as 'desk' | 'bay',
      device: device?.name ?? null,
    }))
}

/** Ends those sessions of a person that are named and not over yet; gives how many. */
export const endNamedSessions = async (
  { prisma, shopId, clock }: Deps,
  staffId: string,
  ids: readonly string[],
): Promise<number> => {
  const { count } = await prisma.session.updateMany({
    where: { shopId, staffId, id: { in: [...ids] }, endedAt: null },
    data: { endedAt: clock.now() },
  })
  return count
}

/** The session has nothing to wait for any more. */
export const finishSignIn = async ({ prisma, shopId }: Deps, id: string): Promise<void> => {
  await prisma.session.update({ where: { shopId_id: { shopId, id } }, data: { awaits: null } })
}

export const markProven = async ({ prisma, shopId, clock }: Deps, id: string): Promise<void> => {
  await prisma.session.update({ where: { shopId_id: { shopId, id } }, data: { provenAt: clock.now() } })
}
