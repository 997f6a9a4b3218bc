import { webcrypto } from 'node:crypto'
import { isIP } from 'node:net'
import { BitString, Integer, OctetString, Utf8String } from 'asn1js'
import {
  AttributeTypeAndValue,
  BasicConstraints,
  Certificate,
  CryptoEngine,
  Extension,
  ExtKeyUsage,
  GeneralName,
  GeneralNames,
  TimeType,
} from 'pkijs'

/** A certificate with its private key, both in PEM. */
export type KeyPair = { readonly certificatePem: string; readonly privateKeyPem: string }

const dayMs = 86_400_000
const engine = () => new CryptoEngine({ name: 'node', crypto: webcrypto as Crypto })
const curve = { name: 'ECDSA', namedCurve: 'P-256' } as const

/** A shop's own authority, which signs host certificates only. Each tablet must be set to trust it. */
export const makeAuthority = async (name: string, now: Date): Promise<KeyPair> => {
  const keys = await newKeys()
  const certificate = await blankCertificate(name, name, now, 10 * 365)
  certificate.extensions = [
    extension('2.5.29.19', new BasicConstraints({ cA: true, pathLenConstraint: 0 }).toSchema().toBER(false)),
    // Certificate signing only (RFC 5280, 4.2.1.3).
    extension(
      '2.5.29.15',
      new BitString({ valueHex: new Uint8Array([0x04]).buffer, unusedBits: 2 }).toBER(false),
    ),
  ]
  await certificate.subjectPublicKeyInfo.importKey(keys.publicKey, engine())
  await certificate.sign(keys.privateKey, 'SHA-256', engine())
  return pair(certificate, keys)
}

/** A certificate for the host's names and addresses, good for 397 days: the longest that browsers take. */
export const makeHostCertificate = async (
  authority: KeyPair,
  hosts: readonly [string, ...string[]],
  now: Date,
): Promise<KeyPair> => {
  const keys = await newKeys()
  const issuer = Certificate.fromBER(derOf(authority.certificatePem))
  const certificate = await blankCertificate(hosts[0], '', now, 397)
  certificate.issuer = issuer.subject
  certificate.extensions = [
    extension('2.5.29.19', new BasicConstraints({ cA: false }).toSchema().toBER(false)),
    extension(
      '2.5.29.15',
      new BitString({ valueHex: new Uint8Array([0x80]).buffer, unusedBits: 7 }).toBER(false),
    ),
    // For servers (id-kp-serverAuth).
    extension('2.5.29.37', new ExtKeyUsage({ keyPurposes: ['1.3.6.1.5.5.7.3.1'] }).toSchema().toBER(false)),
    extension('2.5.29.17', new GeneralNames({ names: hosts.map(nameOf) }).toSchema().toBER(false)),
  ]
  await certificate.subjectPublicKeyInfo.importKey(keys.publicKey, engine())
  await certificate.sign(await importKey(authority.privateKeyPem), 'SHA-256', engine())
  return pair(certificate, keys)
}

const newKeys = async () =>
  (await webcrypto.subtle.generateKey(curve, true, ['sign', 'verify'])) as CryptoKeyPair

const blankCertificate = async (
  subject: string,
  issuer: string,
  now: Date,
  days: number,
): Promise<Certificate> => {
  const certificate = new Certificate()
  certificate.version = 2
  const serial = webcrypto.getRandomValues(new Uint8Array(16))
  // Positive, as RFC 5280 4.1.2.2 requires.
  serial[0] = ((serial[0] ?? 0) & 0x7f) | 0x40
  certificate.serialNumber = new Integer({ valueHex: serial.buffer })
  certificate.subject.typesAndValues.push(commonName(subject))
  certificate.issuer.typesAndValues.push(commonName(issuer))
  certificate.notBefore.value = new Date(now.getTime() - dayMs)
  certificate.notAfter.value = new Date(now.getTime() + (days - 1) * dayMs)
  for (const time of [certificate.notBefore, certificate.notAfter])
    time.type = time.value.getUTCFullYear() < 2050 ? TimeType.UTCTime : TimeType.GeneralizedTime
  return certificate
}

const commonName = (value: string) =>
  new AttributeTypeAndValue({ type: '2.5.4.3', value: new Utf8String({ value: value.slice(0, 64) }) })

const extension = (extnID: string, extnValue: ArrayBuffer) =>
  new Extension({ extnID, critical: extnID !== '2.5.29.17' && extnID !== '2.5.29.37', extnValue })

/** A subject alternative name: 2 is a DNS name, 7 an address (RFC 5280, 4.2.1.6). */
const nameOf = (host: string): GeneralName =>
  isIP(host) === 4
    ? new GeneralName({
        type: 7,
        value: new OctetString({ valueHex: new Uint8Array(host.split('.').map(Number)).buffer }),
      })
    : new GeneralName({ type: 2, value: host })

const pair = async (certificate: Certificate, keys: CryptoKeyPair): Promise<KeyPair> => ({
  certificatePem: pem('CERTIFICATE', certificate.toSchema().toBER(false)),
  privateKeyPem: pem('PRIVATE KEY', await webcrypto.subtle.exportKey('pkcs8', keys.privateKey)),
})

const importKey = (text: string) =>
  webcrypto.subtle.importKey('pkcs8', derOf(text), curve, false, ['sign']) as Promise<CryptoKey>

const derOf = (text: string): ArrayBuffer => {
  const bytes = Buffer.from(text.replace(/-----[^-]+-----|\s/g, ''), 'base64')
  return new Uint8Array(bytes).buffer
}

const pem = (label: string, der: ArrayBuffer): string =>
  `-----BEGIN ${label}-----\n${(
    Buffer.from(der)
      .toString('base64')
      .match(/.{1,64}/g) ?? []
  ).join('\n')}\n-----END ${label}-----\n`
