import { shopId } from '../../../prisma/seeds/demo/places.ts'
import type { DemoShop } from '../../../prisma/seeds/demo-shop.ts'
import { noteLoaded } from './demo-loaded.ts'
import { forShop, type Parts } from './deps.ts'

export type DemoLoading = {
  readonly parts: Parts
  /** Holds the orders that are not whole yet, each until it is. */
  readonly loading: Set<string>
  /** Lends connections that do not wait for the disk at each commit. */
  readonly hastily: (parts: Parts, work: (hasty: Parts) => Promise<unknown>) => Promise<void>
  /** Written ahead, where there was time for it. */
  readonly ahead: Promise<DemoShop> | null
}

/**
 * Writes the demo's orders in memory while their database is made, which leaves the process a second with nothing to do.
 */
export const writeDemoAhead = async (opening: Promise<unknown>): Promise<DemoShop> => {
  const { writeDemoWhile } = await import('../../../prisma/seeds/demo.ts')
  return writeDemoWhile(opening, new Date().toISOString())
}

/** Loads what a floor shows of the demo, and gives what does the rest: until that is done, the demo is not loaded to its end. */
export const loadDemoFast = async ({
  parts,
  loading,
  hastily,
  ahead,
}: DemoLoading): Promise<() => Promise<void>> => {
  const [{ beginDemo, endDemo }, { ordersLeft }, { demoShop }] = await Promise.all([
    import('./seed-shop.ts'),
    import('../../../prisma/seeds/demo.ts'),
    import('../../../prisma/seeds/demo-shop.ts'),
  ])
  const demo = (await ahead) ?? demoShop(parts.clock.now().toISOString())
  await hastily(parts, (hasty) => beginDemo(hasty, shopId, demo))
  for (const { orderId } of ordersLeft(demo)) loading.add(orderId)
  return async () => {
    await hastily(parts, (hasty) => endDemo(hasty, shopId, demo, (orderId) => loading.delete(orderId)))
    await noteLoaded(forShop(parts, shopId))
  }
}
