import { mkdirSync, readdirSync, renameSync, statSync } from 'node:fs'
import { join } from 'node:path'
import type { Client } from 'pg'

/**
 * Digests that a restored database has no note of were written after the moment that was restored. They are moved to
 * `digests-later`, so that the next digest takes its place after the last one that the database knows; nothing is
 * deleted. Gives their number.
 */
export async function setLaterDigestsAside(client: Client, dataFolder: string): Promise<number> {
  const folder = join(dataFolder, 'digests')
  if (statSync(folder, { throwIfNoEntry: false }) === undefined) return 0
  const { rows } = await client.query<{ shopId: string; newest: number }>(
    'select shop_id as "shopId", max(number)::int as newest from digests group by 1',
  )
  const newestOf = new Map(rows.map(({ shopId, newest }) => [shopId, newest]))
  const later = readdirSync(folder).flatMap((shopId) =>
    readdirSync(join(folder, shopId))
      .filter((name) => Number.parseInt(name, 10) > (newestOf.get(shopId) ?? 0))
      .map((name) => ({ shopId, name })),
  )
  for (const { shopId, name } of later) {
    const aside = join(dataFolder, 'digests-later', shopId)
    mkdirSync(aside, { recursive: true, mode: 0o700 })
    renameSync(join(folder, shopId, name), join(aside, name))
  }
  return later.length
}
