import { createPrivateKey, createPublicKey, generateKeyPairSync } from 'node:crypto'
import { existsSync, linkSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { syncFolder } from '@bayledger/db/embedded/sync-folder'
import { openBox } from '@bayledger/ledger/sealed-box'
import { makeDurableFolder } from './core/durable-file.ts'
import type { SealingKey } from './deps.ts'

/**
 * The key to which tablets seal what was tapped on them: made at the first start, kept in the data folder beside the
 * keys that sign. Several services on one database share it. It is never replaced while it exists: what is sealed to it on
 * a tablet that is out of reach can be opened with it alone.
 */
export const keptSealingKey = async (dataFolder: string): Promise<SealingKey> => {
  const folder = join(dataFolder, 'signing')
  const file = join(folder, 'sealing-key.pem')
  if (!existsSync(file)) {
    makeDurableFolder(folder)
    const made = join(folder, `sealing-key.${process.pid}.new`)
    writeFileSync(made, newKeyPem(), { mode: 0o600, flush: true })
    // Of two services that start at once, the first to link its key makes the one that both use.
    linkUnlessThere(made, file)
    rmSync(made)
    syncFolder(folder)
  }
  return sealingKeyOf(readFileSync(file, 'utf8'), file)
}

/** A key that lives as long as this process, for what needs no data folder. */
export const passingSealingKey = (): Promise<SealingKey> => sealingKeyOf(newKeyPem(), 'the new key')

const newKeyPem = (): string =>
  generateKeyPairSync('ec', { namedCurve: 'P-256' })
    .privateKey.export({ type: 'pkcs8', format: 'pem' })
    .toString()

const linkUnlessThere = (made: string, file: string): void => {
  try {
    linkSync(made, file)
  } catch (error) {
    if (!existsSync(file)) throw error
  }
}

const sealingKeyOf = async (pem: string, where: string): Promise<SealingKey> => {
  try {
    const key = createPrivateKey(pem)
    const privateKey = await crypto.subtle.importKey(
      'pkcs8',
      key.export({ type: 'pkcs8', format: 'der' }),
      { name: 'ECDH', namedCurve: 'P-256' },
      false,
      ['deriveBits'],
    )
    return {
      publicKey: createPublicKey(key).export({ type: 'spki', format: 'der' }).toString('base64'),
      open: (box) => openBox(privateKey, box),
    }
  } catch (cause) {
    throw new Error(`${where} does not hold a P-256 key. Put it back from a backup.`, { cause })
  }
}
