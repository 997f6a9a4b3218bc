import type { RecordVersion } from '@bayledger/contract/record'
import type { Prisma, PrismaClient } from '@bayledger/db/generated/client'
import { v7 as newId } from 'uuid'
import type { Deps } from '../deps.ts'
import type { StaffActor } from './actor.ts'
import { presentVersion } from './record-versions.ts'
import { staleVersion } from './stale-version.ts'

type Reader = Pick<PrismaClient, 'settingVersion' | 'staff'>

/** The versions of a setting that holds for the whole shop, with who wrote each, newest first. */
export const listSettingVersions = async (
  prisma: Reader,
  shopId: string,
  kind: string,
): Promise<RecordVersion[]> => {
  const [rows, people] = await Promise.all([
    prisma.settingVersion.findMany({
      where: { shopId, kind, locationId: null },
      orderBy: { version: 'desc' },
    }),
    prisma.staff.findMany({ where: { shopId }, select: { id: true, name: true } }),
  ])
  const names = new Map(people.map(({ id, name }) => [id, name]))
  return rows.map((row) => presentVersion(row, names))
}

/**
 * Adds a version of a setting over the one that was read, 0 where there is none yet; gives its number. `current`: what the
 * stored body is to whoever lost the race. @throws VERSION_STALE with both
 */
export const putSetting = <Content extends object>(
  { prisma, shopId, clock }: Deps,
  actor: Pick<StaffActor, 'staffId'>,
  sent: { readonly kind: string; readonly version: number; readonly content: Content },
  current: (version: number, body: unknown) => unknown,
): Promise<number> =>
  prisma.$transaction(async (tx) => {
    const { kind, version, content } = sent
    // Two writers of one setting wait for one another here.
    await tx.$executeRaw`select pg_advisory_xact_lock(hashtextextended(${`${shopId}/setting/${kind}`}, 0))`
    const newest = await tx.settingVersion.findFirst({
      where: { shopId, kind, locationId: null },
      orderBy: { version: 'desc' },
    })
    const found = newest?.version ?? 0
    if (found !== version) throw staleVersion('setting', current(found, newest?.body), content)
    await tx.settingVersion.create({
      data: {
        shopId,
        id: newId(),
        kind,
        version: found + 1,
        body: content as Prisma.InputJsonValue,
        createdBy: { kind: 'staff', staffId: actor.staffId },
        createdAt: clock.now(),
      },
    })
    return found + 1
  })
