import { webcrypto } from 'node:crypto'
import { BitString, Integer, Utf8String } from 'asn1js'
import {
  AttributeTypeAndValue,
  BasicConstraints,
  Certificate,
  CryptoEngine,
  Extension,
  type Time,
  TimeType,
} from 'pkijs'
import { pemOf } from './pem.ts'

/** A certificate and its private key as PEM text; only its owner may be able to read the key. */
export type SigningIdentity = { readonly certificatePem: string; readonly privateKeyPem: string }

const dayMs = 86_400_000

/**
 * Makes a self-signed EC P-256 certificate (RFC 5280) that may sign documents and nothing else. `notBefore` is
 * a UTC instant; `days` from 1 to 9,000. The caller keeps it: this package writes no file.
 */
export const createSigningIdentity = async (options: {
  readonly commonName: string
  readonly notBefore: string
  readonly days: number
}): Promise<SigningIdentity> => {
  if (options.commonName === '' || options.commonName.length > 64)
    throw new RangeError('A certificate’s name has 1 to 64 characters (RFC 5280, ub-common-name).')
  if (!Number.isInteger(options.days) || options.days < 1 || options.days > 9_000)
    throw new RangeError('A certificate is valid for 1 to 9,000 whole days.')
  const start = new Date(options.notBefore)
  if (Number.isNaN(start.getTime()))
    throw new RangeError('notBefore is a UTC instant, as 2026-01-12T11:40:00.000Z.')
  const engine = new CryptoEngine({ name: 'node', crypto: webcrypto as Crypto })
  const keys = await webcrypto.subtle.generateKey({ name: 'ECDSA', namedCurve: 'P-256' }, true, [
    'sign',
    'verify',
  ])

  const certificate = new Certificate()
  certificate.version = 2
  certificate.serialNumber = new Integer({ valueHex: randomSerial() })
  for (const name of [certificate.issuer, certificate.subject])
    name.typesAndValues.push(
      new AttributeTypeAndValue({
        type: '2.5.4.3',
        value: new Utf8String({ value: options.commonName }),
      }),
    )
  setTime(certificate.notBefore, start)
  setTime(certificate.notAfter, new Date(start.getTime() + options.days * dayMs))
  certificate.extensions = documentSigningOnly()
  await certificate.subjectPublicKeyInfo.importKey(keys.publicKey as CryptoKey, engine)
  await certificate.sign(keys.privateKey as CryptoKey, 'SHA-256', engine)

  return {
    certificatePem: pemOf('CERTIFICATE', new Uint8Array(certificate.toSchema().toBER(false))),
    privateKeyPem: pemOf(
      'PRIVATE KEY',
      new Uint8Array(await webcrypto.subtle.exportKey('pkcs8', keys.privateKey)),
    ),
  }
}

/** Dates from 2050 on need the form with four digits of the year (RFC 5280, 4.1.2.5). */
const setTime = (time: Time, value: Date): void => {
  time.value = value
  time.type = value.getUTCFullYear() < 2050 ? TimeType.UTCTime : TimeType.GeneralizedTime
}

/** 16 random octets with the top bit cleared: positive and far under the 20 octets of RFC 5280, 4.1.2.2. */
const randomSerial = (): ArrayBuffer => {
  const octets = webcrypto.getRandomValues(new Uint8Array(16))
  octets[0] = ((octets[0] ?? 0) & 0x7f) | 0x40
  return octets.buffer
}

/** Not an authority; key usage: digital signature and content commitment (RFC 5280, 4.2.1.3). */
const documentSigningOnly = (): Extension[] => [
  new Extension({
    extnID: '2.5.29.19',
    critical: true,
    extnValue: new BasicConstraints({ cA: false }).toSchema().toBER(false),
  }),
  new Extension({
    extnID: '2.5.29.15',
    critical: true,
    extnValue: new BitString({ valueHex: new Uint8Array([0xc0]).buffer, unusedBits: 6 }).toBER(false),
  }),
]
