import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { createSigningIdentity } from '@bayledger/report/signing-key'
import type { Config } from './config.ts'
import type { Clock, Parts, SigningIdentity } from './deps.ts'

const day = 86_400_000

/**
 * A shop's key for sealing: the one that the settings name, for every shop, or one that was made for the shop and is
 * kept in the data folder. Keys are read once; the first call of a shop without a key makes it.
 */
export const keptSigningIdentities = (
  config: Pick<Config, 'signing' | 'dataFolder'>,
  prisma: Parts['prisma'],
  clock: Clock,
  /** How long before it is made a certificate is good: a demo has reports of the year before. */
  daysBefore = 1,
): Parts['signingOf'] => {
  const kept = new Map<string, Promise<SigningIdentity>>()
  const find = async (shopId: string): Promise<SigningIdentity> => {
    if (config.signing) return config.signing
    const shops = await prisma.shop.findMany({ orderBy: [{ createdAt: 'asc' }, { id: 'asc' }] })
    const shop = shops.find(({ id }) => id === shopId)
    if (!shop) throw new Error(`there is no shop ${shopId} to make a signing key for`)
    const folder = join(config.dataFolder, 'signing')
    return keptSigningIdentity(
      shop === shops[0] ? folder : join(folder, shopId),
      shop.name,
      new Date(clock.now().getTime() - daysBefore * day),
    )
  }
  return (shopId) => {
    const known = kept.get(shopId)
    if (known) return known
    const found = find(shopId)
    found.catch(() => kept.delete(shopId))
    kept.set(shopId, found)
    return found
  }
}

/**
 * The shop's own key for sealing reports: made at the first start, kept in the data folder, readable by its owner
 * only. It must outlive the reports that it sealed, so it is never replaced while it exists.
 */
const keptSigningIdentity = async (
  folder: string,
  shopName: string,
  goodFrom: Date,
): Promise<SigningIdentity> => {
  const certificateFile = join(folder, 'certificate.pem')
  const keyFile = join(folder, 'private-key.pem')
  if (existsSync(certificateFile))
    return {
      certificatePem: readFileSync(certificateFile, 'utf8'),
      privateKeyPem: readFileSync(keyFile, 'utf8'),
    }
  const identity = await createSigningIdentity({
    commonName: shopName.slice(0, 64),
    notBefore: goodFrom.toISOString(),
    days: 20 * 365,
  })
  mkdirSync(folder, { recursive: true, mode: 0o700 })
  writeFileSync(keyFile, identity.privateKeyPem, { mode: 0o600 })
  // The certificate comes last, by a rename: if it exists, so does its key.
  writeFileSync(`${certificateFile}.new`, identity.certificatePem, { mode: 0o600 })
  renameSync(`${certificateFile}.new`, certificateFile)
  return identity
}
