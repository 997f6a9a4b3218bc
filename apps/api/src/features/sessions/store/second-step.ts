import type { Deps } from '../../../deps.ts'

type Of = Pick<Deps, 'prisma' | 'shopId' | 'clock'>

const whereOf = (shopId: string, staffId: string) => ({ shopId_staffId: { shopId, staffId } })

export const findSecondStep = ({ prisma, shopId }: Of, staffId: string) =>
  prisma.secondStep.findUnique({ where: whereOf(shopId, staffId) })

export const countRecoveryCodes = ({ prisma, shopId }: Of, staffId: string): Promise<number> =>
  prisma.recoveryCode.count({ where: { shopId, staffId, usedAt: null } })

/** A new secret, not confirmed yet; whatever was there before is gone, recovery codes too. */
export const begin = async ({ prisma, shopId, clock }: Of, staffId: string, secretBox: string) => {
  const fresh = { secretBox, begunAt: clock.now(), confirmedAt: null, lastStep: 0 }
  await prisma.$transaction([
    prisma.recoveryCode.deleteMany({ where: { shopId, staffId } }),
    prisma.secondStep.upsert({
      where: whereOf(shopId, staffId),
      create: { shopId, staffId, ...fresh },
      update: fresh,
    }),
  ])
}

/** Makes it count from now on, with its recovery codes. */
export const confirm = async (
  { prisma, shopId, clock }: Of,
  staffId: string,
  { step, codeHashes }: { readonly step: number; readonly codeHashes: readonly string[] },
): Promise<void> => {
  const madeAt = clock.now()
  await prisma.$transaction([
    prisma.secondStep.update({
      where: whereOf(shopId, staffId),
      data: { confirmedAt: madeAt, lastStep: step },
    }),
    prisma.recoveryCode.createMany({
      data: codeHashes.map((codeHash) => ({ shopId, staffId, codeHash, madeAt })),
    }),
  ])
}

/** Takes a step's code, once; `false`: it, or a later one, was taken before. */
export const takeStep = async ({ prisma, shopId }: Of, staffId: string, step: number): Promise<boolean> => {
  const { count } = await prisma.secondStep.updateMany({
    where: { shopId, staffId, lastStep: { lt: step } },
    data: { lastStep: step },
  })
  return count === 1
}

/** Takes a recovery code, once; `false`: there is no such one, or it was used. */
export const takeRecoveryCode = async (
  { prisma, shopId, clock }: Of,
  staffId: string,
  codeHash: string,
): Promise<boolean> => {
  const { count } = await prisma.recoveryCode.updateMany({
    where: { shopId, staffId, codeHash, usedAt: null },
    data: { usedAt: clock.now() },
  })
  return count === 1
}

/** `false`: there was none. */
export const end = async ({ prisma, shopId }: Of, staffId: string): Promise<boolean> => {
  const [, { count }] = await prisma.$transaction([
    prisma.recoveryCode.deleteMany({ where: { shopId, staffId } }),
    prisma.secondStep.deleteMany({ where: { shopId, staffId } }),
  ])
  return count > 0
}
