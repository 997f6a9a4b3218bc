import type { RecordVersion } from '@bayledger/contract/record'
import type { Prisma } from '@bayledger/db/generated/client'
import { v7 as newId } from 'uuid'
import type { Deps } from '../deps.ts'
import type { StaffActor } from './actor.ts'
import { presentVersion } from './record-versions.ts'
import { staleVersion } from './stale-version.ts'

type Tx = Prisma.TransactionClient
type Reader = Pick<Tx, 'settingVersion' | 'staff'>

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

type Sent<Content> = { readonly kind: string; readonly version: number; readonly content: Content }
type Current = (version: number, body: unknown) => unknown

/**
 * Adds a version of a setting over the one that was read, 0 where there is none yet; gives its number. `current`: what the
 * stored body is to whoever lost the race. @throws VERSION_STALE with both
 */
export const putSetting = <Content extends object>(
  deps: Deps,
  actor: Pick<StaffActor, 'staffId'>,
  sent: Sent<Content>,
  current: Current,
): Promise<number> => deps.prisma.$transaction((tx) => putSettingIn(tx, deps, actor, sent, current))

/** Two writers of one setting wait for one another here, until the transaction ends. */
export const lockSetting = async (tx: Tx, shopId: string, kind: string): Promise<void> => {
  await tx.$executeRaw`select pg_advisory_xact_lock(hashtextextended(${`${shopId}/setting/${kind}`}, 0))`
}

/** The same within a transaction that does more. */
export const putSettingIn = async <Content extends object>(
  tx: Tx,
  { shopId, clock }: Pick<Deps, 'shopId' | 'clock'>,
  actor: Pick<StaffActor, 'staffId'>,
  { kind, version, content }: Sent<Content>,
  current: Current,
): Promise<number> => {
  await lockSetting(tx, shopId, kind)
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
}
