import { createHash, createPrivateKey, type KeyObject, sign, verify, X509Certificate } from 'node:crypto'
import type { SigningIdentity } from './signing-key.ts'

/** Why a certificate and a key cannot seal. */
export type SigningFault =
  | { readonly why: 'certificate-unreadable' | 'key-unreadable' | 'not-p256' | 'foreign-key' | 'signs-wrong' }
  | { readonly why: 'not-yet-valid' | 'expired'; readonly from: string; readonly to: string }

/**
 * Signs a probe and verifies it with the certificate, and looks at its days. `null`: it seals. Of several certificates the
 * first is the shop's own.
 */
export const signingFault = (identity: SigningIdentity, now: Date): SigningFault | null => {
  const certificate = orNull(() => new X509Certificate(identity.certificatePem))
  if (!certificate) return { why: 'certificate-unreadable' }
  const key = orNull(() => createPrivateKey(identity.privateKeyPem))
  if (!key) return { why: 'key-unreadable' }
  if (!isP256(key) || !isP256(certificate.publicKey)) return { why: 'not-p256' }
  if (!certificate.checkPrivateKey(key)) return { why: 'foreign-key' }
  const probe = Buffer.from(now.toISOString())
  if (!verify('sha256', probe, certificate.publicKey, sign('sha256', probe, key)))
    return { why: 'signs-wrong' }
  const days = {
    from: certificate.validFromDate.toISOString().slice(0, 10),
    to: certificate.validToDate.toISOString().slice(0, 10),
  }
  if (now < certificate.validFromDate) return { why: 'not-yet-valid', ...days }
  return now > certificate.validToDate ? { why: 'expired', ...days } : null
}

/**
 * What names a key for people and registers: SHA-256 over the certificate's public key (SubjectPublicKeyInfo in DER, RFC 5280
 * 4.1.2.7), 64 lower-case hexadecimal digits. A renewed certificate of the same key has the same. Throws where the text holds no
 * certificate.
 */
export const fingerprintOf = (certificatePem: string): string =>
  createHash('sha256')
    .update(new X509Certificate(certificatePem).publicKey.export({ type: 'spki', format: 'der' }))
    .digest('hex')

const isP256 = (key: KeyObject): boolean =>
  key.asymmetricKeyType === 'ec' && key.asymmetricKeyDetails?.namedCurve === 'prime256v1'

const orNull = <T>(read: () => T): T | null => {
  try {
    return read()
  } catch {
    return null
  }
}
