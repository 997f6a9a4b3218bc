import type { Deps, Parts } from '../../deps.ts'

export const findLocation = (deps: Deps, locationId: string) =>
  deps.prisma.location.findUnique({ where: { shopId_id: { shopId: deps.shopId, id: locationId } } })

export const insertCode = async (
  deps: Deps,
  code: { codeHash: string; locationId: string; staffId: string; expiresAt: Date },
): Promise<void> => {
  await deps.prisma.enrollmentCode.create({
    data: {
      shopId: deps.shopId,
      codeHash: code.codeHash,
      locationId: code.locationId,
      createdBy: { kind: 'staff', staffId: code.staffId },
      expiresAt: code.expiresAt,
    },
  })
}

export type OpenCode = { readonly shopId: string; readonly codeHash: string }

/** The newest codes of all shops that nobody has used and that are not too old. One from before codes were salted is none. */
export const listOpenCodes = ({ prisma, clock }: Parts, most: number): Promise<OpenCode[]> =>
  prisma.enrollmentCode.findMany({
    where: { codeHash: { startsWith: '$argon2id$' }, usedAt: null, expiresAt: { gt: clock.now() } },
    orderBy: { expiresAt: 'desc' },
    take: most,
    select: { shopId: true, codeHash: true },
  })

/** Uses the code up and enrolls the tablet, or neither; gives its shop. `null`: it was used meanwhile. */
export const enroll = (
  { prisma, clock }: Parts,
  {
    shopId,
    codeHash,
    id,
    name,
    tokenHash,
    publicKey,
  }: OpenCode & {
    readonly id: string
    readonly name: string
    readonly tokenHash: string
    readonly publicKey: string | null
  },
): Promise<string | null> =>
  prisma.$transaction(async (tx) => {
    const now = clock.now()
    const [used] = await tx.enrollmentCode.updateManyAndReturn({
      where: { shopId, codeHash, usedAt: null, expiresAt: { gt: now } },
      data: { usedAt: now },
      select: { location: true },
    })
    if (!used) return null
    const { location } = used
    await tx.device.create({
      data: { shopId, id, locationId: location.id, name, tokenHash, enrolledAt: now },
    })
    if (publicKey !== null)
      await tx.deviceKey.create({ data: { shopId, deviceId: id, publicKey, registeredAt: now } })
    return shopId
  })

export type DeviceFound = {
  readonly id: string
  readonly name: string
  readonly location: { readonly id: string; readonly name: string; readonly timeZone: string }
  readonly key: object | null
  readonly offlineHours: number
  readonly pins: readonly { readonly staffId: string; readonly version: number }[]
}

/** A tablet that is not out, with what its shop says to all of its tablets. */
export const findDevice = async (deps: Deps, deviceId: string): Promise<DeviceFound | null> => {
  const { prisma, shopId } = deps
  const [device, shop, people] = await Promise.all([
    prisma.device.findUnique({
      where: { shopId_id: { shopId, id: deviceId }, revokedAt: null },
      include: { location: true, key: true },
    }),
    prisma.shop.findUniqueOrThrow({ where: { id: shopId } }),
    prisma.staff.findMany({
      where: { shopId, active: true, pinHash: { not: null } },
      select: { id: true, pinVersion: true },
      orderBy: { id: 'asc' },
    }),
  ])
  return (
    device && {
      ...device,
      offlineHours: shop.offlineHours,
      pins: people.map(({ id, pinVersion }) => ({ staffId: id, version: pinVersion })),
    }
  )
}

export const findAnywhere = async (
  { prisma }: Pick<Parts, 'prisma'>,
  id: string,
): Promise<{ readonly shopId: string; readonly isOut: boolean } | null> => {
  const device = await prisma.device.findFirst({ where: { id } })
  return device && { shopId: device.shopId, isOut: device.revokedAt !== null }
}

export const findKey = async (
  { prisma, shopId }: Pick<Deps, 'prisma' | 'shopId'>,
  deviceId: string,
): Promise<string | null> =>
  (await prisma.deviceKey.findUnique({ where: { shopId_deviceId: { shopId, deviceId } } }))?.publicKey ?? null

/** Keeps a tablet's key; `false`: there is another one already. */
export const keepKey = async (deps: Deps, deviceId: string, publicKey: string): Promise<boolean> => {
  const { prisma, shopId, clock } = deps
  await prisma.deviceKey.createMany({
    data: [{ shopId, deviceId, publicKey, registeredAt: clock.now() }],
    skipDuplicates: true,
  })
  return (await findKey(deps, deviceId)) === publicKey
}

/** What a tablet says that it has not sent, as of now; `false`: there is no such tablet, or it is out. */
export const keepUnsent = async (
  { prisma, shopId, clock }: Deps,
  deviceId: string,
  { entries, photos }: { readonly entries: number; readonly photos: number },
): Promise<boolean> => {
  const { count } = await prisma.device.updateMany({
    where: { shopId, id: deviceId, revokedAt: null },
    data: { unsentEntries: entries, unsentPhotos: photos, unsentToldAt: clock.now() },
  })
  return count > 0
}
