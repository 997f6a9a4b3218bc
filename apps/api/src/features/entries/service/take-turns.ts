/** Orders are opened one after the other in each shop. */
export type Openings = {
  readonly inTurn: <T>(shopId: string, open: () => Promise<T>) => Promise<T>
}

/**
 * Every opening takes the next number of its shop, and only one can have it: those that arrive together would all but
 * one have to try again, and under a steady stream of them the same one could lose every time.
 */
export const takeOpeningsInTurn = (): Openings => {
  const lasts = new Map<string, Promise<unknown>>()
  return {
    inTurn: (shopId, open) => {
      const next = (lasts.get(shopId) ?? Promise.resolve()).then(open)
      const settled = next.catch(() => undefined)
      lasts.set(shopId, settled)
      void settled.then(() => {
        if (lasts.get(shopId) === settled) lasts.delete(shopId)
      })
      return next
    },
  }
}
