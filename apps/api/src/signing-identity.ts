import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { createSigningIdentity } from '@bayledger/report/signing-key'
import type { SigningIdentity } from './deps.ts'

const day = 86_400_000

/**
 * The shop's own key for sealing reports: made at the first start, kept in the data folder, readable by its owner
 * alone. It must outlive the reports that it sealed, so it is never made anew while it is there.
 */
export const keptSigningIdentity = async (
  dataFolder: string,
  shopName: string,
  now: Date,
): Promise<SigningIdentity> => {
  const folder = join(dataFolder, 'signing')
  const certificateFile = join(folder, 'certificate.pem')
  const keyFile = join(folder, 'private-key.pem')
  if (existsSync(certificateFile))
    return {
      certificatePem: readFileSync(certificateFile, 'utf8'),
      privateKeyPem: readFileSync(keyFile, 'utf8'),
    }
  const identity = await createSigningIdentity({
    commonName: shopName.slice(0, 64),
    notBefore: new Date(now.getTime() - day).toISOString(),
    days: 20 * 365,
  })
  mkdirSync(folder, { recursive: true, mode: 0o700 })
  writeFileSync(keyFile, identity.privateKeyPem, { mode: 0o600 })
  // The certificate last, by a rename: where it stands, its key stands too.
  writeFileSync(`${certificateFile}.new`, identity.certificatePem, { mode: 0o600 })
  renameSync(`${certificateFile}.new`, certificateFile)
  return identity
}
