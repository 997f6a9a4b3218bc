import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { syncFolder } from '@bayledger/db/embedded/sync-folder'
import { makeDurableFolder, writeDurably } from '../core/durable-file.ts'
import type { SigningIdentity } from '../deps.ts'

/** What a folder holds of a key: both files, one alone, or neither. */
export type FoundFiles =
  | { readonly found: 'both'; readonly identity: SigningIdentity }
  | { readonly found: 'key-only' | 'certificate-only' | 'nothing' }

const certificateIn = (folder: string) => join(folder, 'certificate.pem')
const keyIn = (folder: string) => join(folder, 'private-key.pem')

export const readSigningFolder = (folder: string): FoundFiles => {
  const [certificate, key] = [certificateIn(folder), keyIn(folder)]
  if (existsSync(certificate) && existsSync(key))
    return {
      found: 'both',
      identity: {
        certificatePem: readFileSync(certificate, 'utf8'),
        privateKeyPem: readFileSync(key, 'utf8'),
      },
    }
  if (existsSync(key)) return { found: 'key-only' }
  return { found: existsSync(certificate) ? 'certificate-only' : 'nothing' }
}

/**
 * Puts a new key and its certificate in place. What was there before is kept under `earlier/<name>`; nothing is overwritten.
 * Both files are readable by their owner alone, and on the disk before they take their names; the names are flushed too.
 */
export const writeSigningFolder = (folder: string, identity: SigningIdentity, name: string): void => {
  makeDurableFolder(folder)
  const earlier = join(folder, 'earlier', name)
  for (const file of [certificateIn(folder), keyIn(folder)])
    if (existsSync(file)) writeDurably(file.replace(folder, earlier), readFileSync(file, 'utf8'))
  writeFileSync(`${keyIn(folder)}.new`, identity.privateKeyPem, { mode: 0o600, flush: true })
  writeFileSync(`${certificateIn(folder)}.new`, identity.certificatePem, { mode: 0o600, flush: true })
  renameSync(`${keyIn(folder)}.new`, keyIn(folder))
  renameSync(`${certificateIn(folder)}.new`, certificateIn(folder))
  syncFolder(folder)
}
