import { tabletDatabase } from './tablet-database.ts'
import { tabletVault } from './vault.ts'

/** The forms that were half filled in when this tablet was last closed, by their keys. */
export const loadForms = async (): Promise<ReadonlyMap<string, unknown>> => {
  const reading = (await tabletDatabase()).transaction('forms')
  const [keys, contents] = await Promise.all([reading.store.getAllKeys(), reading.store.getAll()])
  const opened = await Promise.all(contents.map((kept) => tabletVault.open(kept)))
  return new Map(keys.map((key, index) => [key, opened[index]]))
}

/** The newest content of each form that is on its way to the disk: keys are pressed faster than it is written. */
const newest = new Map<string, unknown>()

/** The change before: none overtakes another on the way to the disk. */
let before: Promise<unknown> = Promise.resolve()

const keepNewest = async (key: string): Promise<void> => {
  // An earlier turn has kept it.
  if (!newest.has(key)) return
  const content = newest.get(key)
  newest.delete(key)
  try {
    const kept = content === undefined ? undefined : await tabletVault.seal(content)
    const database = await tabletDatabase()
    await (kept === undefined ? database.delete('forms', key) : database.put('forms', kept, key))
  } catch (problem) {
    // A change that counted on this one tries it again, and is not told that it is kept.
    if (!newest.has(key)) newest.set(key, content)
    throw problem
  }
}

/** Keeps a half-filled form, sealed; `undefined` forgets it. */
export const keepForm = (key: string, content: unknown): Promise<void> => {
  newest.set(key, content)
  const keeping = before.then(() => keepNewest(key))
  before = keeping.catch(() => undefined)
  return keeping
}
