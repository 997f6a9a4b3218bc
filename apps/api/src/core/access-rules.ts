import { AccessRulesContent } from '@bayledger/contract/access-rules'
import type { Prisma } from '@bayledger/db/generated/client'
import * as z from 'zod/mini'

/** The setting that says what the shop asks of everybody at the sign-in. */
export const accessRulesKind = 'access-rules'

/** A stored version; what it does not say is not asked for. */
export const readAccessRules = (body: unknown): AccessRulesContent => {
  const stored = z.safeParse(AccessRulesContent, body)
  return stored.success ? stored.data : { secondStep: false }
}

/** The rules as they are now. */
export const findAccessRules = async (
  prisma: Pick<Prisma.TransactionClient, 'settingVersion'>,
  shopId: string,
): Promise<AccessRulesContent> => {
  const newest = await prisma.settingVersion.findFirst({
    where: { shopId, kind: accessRulesKind, locationId: null },
    orderBy: { version: 'desc' },
  })
  return readAccessRules(newest?.body)
}
