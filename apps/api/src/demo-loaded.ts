import type { PrismaClient } from '@bayledger/db/client'
import { v7 as newId } from 'uuid'
import type { Deps } from './deps.ts'

/** The setting that is written last: without it, a first start was broken off in the middle. */
const loadedKind = 'demo-loaded'

/** Written once the year before the demo's day is loaded. */
export const yearLoadedKind = 'demo-year-loaded'

export const noteLoaded = async (
  { prisma, shopId, clock }: Deps,
  kind: typeof loadedKind | typeof yearLoadedKind = loadedKind,
): Promise<void> => {
  await prisma.settingVersion.create({
    data: {
      shopId,
      id: newId(),
      kind,
      version: 1,
      body: {},
      createdBy: { kind: 'system' },
      createdAt: clock.now(),
    },
  })
}

export const isLoadedToTheEnd = async (
  prisma: PrismaClient,
  shopId: string,
  kind: typeof loadedKind | typeof yearLoadedKind = loadedKind,
): Promise<boolean> => (await prisma.settingVersion.count({ where: { shopId, kind } })) > 0
