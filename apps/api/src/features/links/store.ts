import type { Deps, Parts } from '../../deps.ts'

export type NewLink = {
  readonly id: string
  readonly orderId: string
  readonly tokenHash: string
  readonly createdAt: Date
  readonly expiresAt: Date
  readonly staffId: string
}

export const insertLink = async (deps: Deps, { staffId, ...link }: NewLink): Promise<void> => {
  await deps.prisma.customerLink.create({
    data: { shopId: deps.shopId, ...link, createdBy: { kind: 'staff', staffId } },
  })
}

/** The week begins when the message goes, not when it was asked for. `false`: the link is there and withdrawn. */
export const upsertLink = async (
  deps: Deps,
  { madeBy, ...link }: Omit<NewLink, 'staffId'> & { readonly madeBy: object },
): Promise<boolean> => {
  const row = await deps.prisma.customerLink.upsert({
    where: { shopId_id: { shopId: deps.shopId, id: link.id } },
    create: { shopId: deps.shopId, ...link, createdBy: madeBy },
    update: { expiresAt: link.expiresAt },
  })
  return row.revokedAt === null
}

export const listLinks = (deps: Deps, orderId: string) =>
  deps.prisma.customerLink.findMany({
    where: { shopId: deps.shopId, orderId },
    include: { openings: { orderBy: { openedAt: 'asc' } } },
    orderBy: { createdAt: 'asc' },
  })

export type LinkRow = Awaited<ReturnType<typeof listLinks>>[number]

export const markRevoked = async (deps: Deps, orderId: string, id: string): Promise<boolean> => {
  const { count } = await deps.prisma.customerLink.updateMany({
    where: { shopId: deps.shopId, orderId, id },
    data: { revokedAt: deps.clock.now() },
  })
  return count === 1
}

/** A link that still opens, by the digest of its secret. */
export const findOpenLink = ({ prisma, clock }: Parts, tokenHash: string) =>
  prisma.customerLink.findFirst({
    where: { tokenHash, revokedAt: null, expiresAt: { gt: clock.now() } },
  })

/** Notes the opening and begins the session, both or neither. */
export const insertOpening = async (
  deps: Deps,
  opening: {
    readonly id: string
    readonly linkId: string
    readonly tokenHash: string
    readonly expiresAt: Date
  },
): Promise<void> => {
  const { shopId } = deps
  const { id, linkId, tokenHash, expiresAt } = opening
  await deps.prisma.$transaction([
    deps.prisma.linkOpening.create({ data: { shopId, id, linkId, openedAt: deps.clock.now() } }),
    deps.prisma.linkSession.create({ data: { shopId, tokenHash, linkId, expiresAt } }),
  ])
}

export const findLinkSession = async (
  { prisma, clock }: Parts,
  tokenHash: string,
): Promise<{ shopId: string; linkId: string; orderId: string } | null> => {
  const now = clock.now()
  const session = await prisma.linkSession.findFirst({
    where: {
      tokenHash,
      expiresAt: { gt: now },
      link: { revokedAt: null, expiresAt: { gt: now } },
    },
    include: { link: true },
  })
  return session ? { shopId: session.shopId, linkId: session.linkId, orderId: session.link.orderId } : null
}
