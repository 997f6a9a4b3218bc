import { tabletDatabase } from './tablet-database.ts'

/** The forms that were half filled in when this tablet was last closed, by their keys. */
export const loadForms = async (): Promise<ReadonlyMap<string, unknown>> => {
  const reading = (await tabletDatabase()).transaction('forms')
  const [keys, contents] = await Promise.all([reading.store.getAllKeys(), reading.store.getAll()])
  return new Map(keys.map((key, index) => [key, contents[index]]))
}

/** Keeps a half-filled form; `undefined` forgets it. */
export const keepForm = async (key: string, content: unknown): Promise<void> => {
  const database = await tabletDatabase()
  await (content === undefined ? database.delete('forms', key) : database.put('forms', content, key))
}
