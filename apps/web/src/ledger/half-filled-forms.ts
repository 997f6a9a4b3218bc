import { tabletDatabase } from './tablet-database.ts'
import { tabletVault } from './vault.ts'

/** The forms that were half filled in when this tablet was last closed, by their keys. */
export const loadForms = async (): Promise<ReadonlyMap<string, unknown>> => {
  const reading = (await tabletDatabase()).transaction('forms')
  const [keys, contents] = await Promise.all([reading.store.getAllKeys(), reading.store.getAll()])
  const opened = await Promise.all(contents.map((kept) => tabletVault.open(kept)))
  return new Map(keys.map((key, index) => [key, opened[index]]))
}

/** The change before: none overtakes another on the way to the disk. */
let before: Promise<unknown> = Promise.resolve()

const keepNow = async (key: string, content: unknown): Promise<void> => {
  const kept = content === undefined ? undefined : await tabletVault.seal(content)
  const database = await tabletDatabase()
  await (kept === undefined ? database.delete('forms', key) : database.put('forms', kept, key))
}

/** Keeps a half-filled form, sealed; `undefined` forgets it. */
export const keepForm = (key: string, content: unknown): Promise<void> => {
  const keeping = before.then(() => keepNow(key, content))
  before = keeping.catch(() => undefined)
  return keeping
}
