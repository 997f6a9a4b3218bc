import { RetentionContent } from '@bayledger/contract/retention'
import type { Prisma } from '@bayledger/db/generated/client'
import * as z from 'zod/mini'

/** The setting that says for how long what is of people is kept. */
export const retentionKind = 'retention'

/**
 * What holds until an owner says otherwise. `reportYears`: repair dealers in California keep invoices, estimates, work orders and what
 * authorized them for three years (California Code of Regulations, title 16, section 3358). All others: common practice, no source.
 */
export const usualRetention: RetentionContent = {
  customerYears: 7,
  reportYears: 3,
  draftDays: 30,
  messageDays: 90,
  openingDays: 365,
  browserDays: 180,
  refusedDays: 365,
}

/** A stored version; times that it does not say are the usual ones. */
export const readRetention = (body: unknown): RetentionContent => {
  const stored = z.safeParse(z.partial(RetentionContent), body)
  const said = stored.success ? Object.entries(stored.data).filter(([, time]) => time !== undefined) : []
  return { ...usualRetention, ...Object.fromEntries(said) }
}

/** The shop's times as they are now. */
export const findRetention = async (
  prisma: Pick<Prisma.TransactionClient, 'settingVersion'>,
  shopId: string,
): Promise<RetentionContent> => {
  const newest = await prisma.settingVersion.findFirst({
    where: { shopId, kind: retentionKind, locationId: null },
    orderBy: { version: 'desc' },
  })
  return readRetention(newest?.body)
}

/** So many years after an instant. */
export const yearsAfter = (at: Date, years: number): Date => {
  const later = new Date(at)
  later.setUTCFullYear(later.getUTCFullYear() + years)
  return later
}
