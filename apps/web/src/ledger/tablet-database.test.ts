import * as made from 'fake-indexeddb'
import { openDB } from 'idb'
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest'
import { tabletDatabase } from './tablet-database.ts'

const parcel = { entry: { id: '01890a5d-ac96-774b-bcce-b302099a8057' } }
const refused = { code: 'ORDER_ENDED' }
const form = { rows: { gauge: '31.' } }

/** What an earlier program left on the tablet: rows as they were written. */
const leaveBehind = async (version: 1 | 2): Promise<void> => {
  const database = await openDB('bayledger.bay', version, {
    upgrade: (left) => {
      left.createObjectStore('parcels', { keyPath: 'number', autoIncrement: true })
      left.createObjectStore('forms')
      if (version === 2) for (const store of ['reads', 'keys', 'pictures']) left.createObjectStore(store)
    },
  })
  await database.put('parcels', { parcel, refused: null })
  await database.put('parcels', { parcel, refused })
  await database.put('forms', form, 'order step')
  database.close()
}

// Other tests of the same worker have no such database.
beforeAll(() => {
  for (const [name, value] of Object.entries(made)) if (name !== 'default') vi.stubGlobal(name, value)
})
afterAll(() => vi.unstubAllGlobals())
afterEach(
  () =>
    new Promise((resolve) => {
      // Whoever has it open lets go of it.
      indexedDB.deleteDatabase('bayledger.bay').onsuccess = resolve
    }),
)

describe('the database of a tablet', () => {
  it.each([1, 2] as const)(
    'of version %i keeps what waits in it, in its order, and half-filled forms',
    async (version) => {
      await leaveBehind(version)
      const database = await tabletDatabase()
      expect(database.version).toBe(3)
      expect(await database.getAll('parcels')).toEqual([
        { number: 1, kept: { is: 'plain', value: parcel }, refused: null, box: null },
        {
          number: 2,
          kept: { is: 'plain', value: parcel },
          refused: { is: 'plain', value: refused },
          box: null,
        },
      ])
      expect(await database.get('forms', 'order step')).toEqual({ is: 'plain', value: form })
      expect([...database.objectStoreNames].sort()).toEqual(['forms', 'keys', 'parcels', 'pictures', 'reads'])
    },
  )

  it('that is new has every room', async () => {
    const database = await tabletDatabase()
    expect([...database.objectStoreNames].sort()).toEqual(['forms', 'keys', 'parcels', 'pictures', 'reads'])
    expect(await database.count('parcels')).toBe(0)
  })
})
