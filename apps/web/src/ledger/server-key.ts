import { indexedDbKeys } from './key-store.ts'

const name = 'sealing'

/** The server's public key, as it said it at the last contact. */
export const keepServerKey = (publicKey: string): Promise<void> => indexedDbKeys.put(name, publicKey)

/** `null`: this tablet has not heard it. */
export const keptServerKey = async (): Promise<string | null> => {
  const kept = await indexedDbKeys.get(name)
  return typeof kept === 'string' ? kept : null
}
