import type { RetentionContent } from '@bayledger/contract/retention'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import {
  findRetention,
  retentionKind as kind,
  readRetention,
  yearsAfter,
} from '../../core/retention-times.ts'
import { listSettingVersions, putSetting } from '../../core/setting-versions.ts'
import type { Deps } from '../../deps.ts'
import { erasePerson } from '../erasures/service.ts'
import { presentRetention } from './present.ts'
import * as store from './store.ts'

/** The times that hold, and who wrote which version, newest first. */
export const getRetention = async ({ prisma, shopId }: Deps) => {
  const history = await listSettingVersions(prisma, shopId, kind)
  const [newest] = history
  return {
    record: presentRetention(newest?.version ?? 0, newest?.content),
    history: history.map((version) => ({ ...version, content: { ...readRetention(version.content) } })),
  }
}

/** Writes the next version over the one that was read. @throws VERSION_STALE with both */
export const putRetention = async (
  deps: Deps,
  actor: StaffActor,
  version: number,
  content: RetentionContent,
) => presentRetention(await putSetting(deps, actor, { kind, version, content }, presentRetention), content)

const aheadDays = 30

/** What is forgotten next: things by number, and customers whose time is over within a month. */
export const listDue = async ({ prisma, shopId, clock }: Deps) => {
  const times = await findRetention(prisma, shopId)
  const ahead = new Date(clock.now().getTime() + aheadDays * 86_400_000)
  const customers =
    times.customerYears === null
      ? []
      : await store.listIdleCustomers(prisma, shopId, yearsAfter(ahead, 0 - times.customerYears))
  return {
    counts: await store.countPast(prisma, shopId, clock.now(), times),
    customers: customers.map((one) => ({ ...one, lastAt: one.lastAt.toISOString() })),
  }
}

/**
 * Forgets what is older than the shop's times, and erases customers whose time is over. One who is held, owes or is owed stays, and is
 * looked at again at the next round.
 */
export const forgetDue = async (deps: Deps): Promise<void> => {
  const { prisma, shopId, clock } = deps
  const times = await findRetention(prisma, shopId)
  await store.forgetPast(prisma, shopId, clock.now(), times)
  if (times.customerYears === null) return
  const before = yearsAfter(clock.now(), 0 - times.customerYears)
  for (const { customerId, held } of await store.listIdleCustomers(prisma, shopId, before)) {
    if (held) continue
    await erasePerson(deps, customerId, { reason: 'time-over', identity: null, by: null }).catch(
      (error: unknown) => {
        if (!(error instanceof AppError) || error.code !== 'ERASURE_REFUSED') throw error
      },
    )
  }
}
