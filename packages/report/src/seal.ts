import { createPrivateKey, webcrypto, X509Certificate } from 'node:crypto'
import { CryptoKeySigner, PDF } from '@libpdf/core'
import { mostTokenBytes } from './stamp/stamp-in-file.ts'

/** What seals: PEM text. A bought certificate is followed by its issuers, nearest first, in the same text. */
export type SealOptions = {
  readonly certificate: string
  readonly privateKey: string
  readonly reason: string
  /** UTC instant, claimed by the signer and not proven. */
  readonly signedAt: string
  /** Whether room is left for a time-stamp, which is put in afterwards. */
  readonly roomForStamp?: boolean
}

/** Room for the signature with the certificates of its issuers, in bytes. */
const signatureBytes = 12 * 1024

export class SealError extends Error {}

/**
 * Seals a PDF: a digital signature over every byte (PAdES, CAdES detached, EC P-256, SHA-256), so that any
 * reader can detect a changed report.
 *
 * @throws SealError if the certificate or key cannot be read, is not EC P-256, does not match the other, or the
 * certificate is not valid at `signedAt`.
 */
export const sealReport = async (pdf: Uint8Array, options: SealOptions): Promise<Uint8Array> => {
  const [certificate, ...chain] = certificatesIn(options.certificate)
  if (!certificate) throw new SealError('The certificate text holds no certificate (PEM, RFC 7468).')
  const key = keyIn(options.privateKey)
  if (!certificate.checkPrivateKey(key)) throw new SealError('The private key is not the certificate’s own.')
  const signedAt = new Date(options.signedAt)
  if (signedAt < certificate.validFromDate || signedAt > certificate.validToDate)
    throw new SealError(
      `The certificate is valid from ${certificate.validFrom} to ${certificate.validTo}, not at ${options.signedAt}.`,
    )
  const signer = new CryptoKeySigner(
    (await webcrypto.subtle.importKey(
      'pkcs8',
      key.export({ format: 'der', type: 'pkcs8' }),
      { name: 'ECDSA', namedCurve: 'P-256' },
      false,
      ['sign'],
    )) as CryptoKey,
    certificate.raw,
    'EC',
    'ECDSA',
    chain.map(({ raw }) => raw),
  )
  const document = await PDF.load(pdf)
  const { bytes } = await document.sign({
    signer,
    reason: options.reason,
    signingTime: signedAt,
    subFilter: 'ETSI.CAdES.detached',
    digestAlgorithm: 'SHA-256',
    fieldName: 'Seal',
    estimatedSize: signatureBytes + (options.roomForStamp ? mostTokenBytes : 0),
  })
  return bytes
}

const certificatesIn = (pem: string): X509Certificate[] => {
  const blocks = pem.match(/-----BEGIN CERTIFICATE-----[^-]+-----END CERTIFICATE-----/g) ?? []
  try {
    return blocks.map((block) => new X509Certificate(block))
  } catch (cause) {
    throw new SealError('The certificate cannot be read.', { cause })
  }
}

const keyIn = (pem: string) => {
  const key = readKey(pem)
  if (key.asymmetricKeyType !== 'ec' || key.asymmetricKeyDetails?.namedCurve !== 'prime256v1')
    throw new SealError(
      'The private key is not EC P-256 (prime256v1); reports are sealed with that kind only.',
    )
  return key
}

const readKey = (pem: string) => {
  try {
    return createPrivateKey(pem)
  } catch (cause) {
    throw new SealError('The private key cannot be read; it is PEM text without a passphrase.', { cause })
  }
}
