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

/** Uses the code up and enrolls the tablet, or neither. `null`: no such code, used already, or too old. */
export const enroll = (
  { prisma, clock }: Parts,
  { codeHash, id, name, tokenHash }: { codeHash: string; id: string; name: string; tokenHash: string },
) =>
  prisma.$transaction(async (tx) => {
    const now = clock.now()
    const [used] = await tx.enrollmentCode.updateManyAndReturn({
      where: { codeHash, usedAt: null, expiresAt: { gt: now } },
      data: { usedAt: now },
      select: { shopId: true, location: true },
    })
    if (!used) return null
    const { shopId, location } = used
    await tx.device.create({
      data: { shopId, id, locationId: location.id, name, tokenHash, enrolledAt: now },
    })
    return location
  })

export const findDevice = (deps: Deps, deviceId: string) =>
  deps.prisma.device.findUnique({
    where: { shopId_id: { shopId: deps.shopId, id: deviceId } },
    include: { location: true },
  })
