import { generateKeyPairSync } from 'node:crypto'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { writeDurably } from '../core/durable-file.ts'
import { type DigestKey, fingerprintOf } from './digest.ts'

/** What keeps digests from being signed or checked, in words that say what to do. */
export class DigestProblem extends Error {
  override readonly name = 'DigestProblem'
}

const fileOf = (dataFolder: string): string => join(dataFolder, 'signing', 'digest-key.pem')

/** The key that signs digests; `null` where none was made yet. It is a key of its own: a certificate for reports expires. */
export const readDigestKey = (dataFolder: string): DigestKey | null => {
  const file = fileOf(dataFolder)
  if (!existsSync(file)) return null
  const privateKeyPem = readFileSync(file, 'utf8')
  try {
    return { privateKeyPem, fingerprint: fingerprintOf(privateKeyPem) }
  } catch (cause) {
    throw new DigestProblem(`${file} does not hold a private key. Put it back from a backup.`, { cause })
  }
}

/** The key that signs digests, made at the first use. Where there are digests already a missing key is never replaced. */
export const keptDigestKey = (dataFolder: string, hasDigests: boolean): DigestKey => {
  const known = readDigestKey(dataFolder)
  if (known) return known
  const file = fileOf(dataFolder)
  if (hasDigests)
    throw new DigestProblem(
      `There are daily digests, and the key that signed them is missing (${file}). Put it back from a backup. A new key would make every earlier digest look forged, so none is made.`,
    )
  const { privateKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' })
  writeDurably(file, privateKey.export({ type: 'pkcs8', format: 'pem' }).toString())
  return keptDigestKey(dataFolder, true)
}
