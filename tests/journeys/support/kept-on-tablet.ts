import type { Page } from 'playwright-core'

/** Everything that the browser keeps of the program for this address, as text by path. */
export const keptFiles = (bay: Page): Promise<Record<string, string>> =>
  bay.evaluate(async () => {
    const files: Record<string, string> = {}
    for (const name of await caches.keys()) {
      const cache = await caches.open(name)
      for (const asked of await cache.keys())
        files[new URL(asked.url).pathname] = (await (await cache.match(asked))?.text()) ?? ''
    }
    return files
  })

/** The keys of what the tablet keeps of the server's replies, read beside the program; the replies themselves lie sealed. */
export const keptReads = (bay: Page): Promise<string[][]> =>
  bay.evaluate(
    () =>
      new Promise<string[][]>((resolve, reject) => {
        const opening = indexedDB.open('bayledger.bay')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const reading = opening.result.transaction('reads').objectStore('reads').getAllKeys()
          reading.onerror = () => reject(reading.error)
          reading.onsuccess = () => {
            opening.result.close()
            resolve(reading.result.map((name) => JSON.parse(String(name))))
          }
        }
      }),
  )

/** The orders of which the tablet keeps what the server said, by their ids. */
export const keptOrders = async (bay: Page): Promise<string[]> =>
  (await keptReads(bay)).flatMap(([first, id]) => (first === 'orders' && id !== undefined ? [id] : []))

/** How many parcels of entries lie on the tablet's disk: what is shown as written is there a moment later. */
export const keptParcels = (bay: Page): Promise<number> =>
  bay.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open('bayledger.bay')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const counting = opening.result.transaction('parcels').objectStore('parcels').count()
          counting.onerror = () => reject(counting.error)
          counting.onsuccess = () => {
            opening.result.close()
            resolve(counting.result)
          }
        }
      }),
  )
