import type { Deps } from '../../../deps.ts'

type Named = { readonly staffId: string; readonly tokenHash: string }

/** Whether a person has signed in in this browser since an instant. */
export const isKnownBrowser = async (
  { prisma, shopId }: Deps,
  { since, ...named }: Named & { readonly since: Date },
): Promise<boolean> => {
  const where = { shopId, ...named, lastUsedAt: { gte: since } }
  return (await prisma.knownBrowser.count({ where })) > 0
}

export const rememberBrowser = async ({ prisma, shopId, clock }: Deps, named: Named): Promise<void> => {
  const now = clock.now()
  await prisma.knownBrowser.upsert({
    where: { shopId_staffId_tokenHash: { shopId, ...named } },
    create: { shopId, ...named, knownSince: now, lastUsedAt: now },
    update: { lastUsedAt: now },
  })
}
