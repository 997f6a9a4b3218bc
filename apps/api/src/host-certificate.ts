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
  GeneralSubtree,
  NameConstraints,
  TimeType,
} from 'pkijs'

/** A certificate with its private key, both in PEM. */
export type KeyPair = { readonly certificatePem: string; readonly privateKeyPem: string }

const dayMs = 86_400_000
const engine = () => new CryptoEngine({ name: 'node', crypto: webcrypto as Crypto })
const curve = { name: 'ECDSA', namedCurve: 'P-256' } as const

/** Names that exist in a shop's own network only (RFC 6762, RFC 8375; `internal` is reserved by ICANN since 2024; `lan` by custom). */
const localNames = ['localhost', 'local', 'lan', 'internal', 'home.arpa'] as const
/** Addresses of such networks, with their masks (RFC 1918, RFC 3927, RFC 1122). */
const localAddresses = [
  [127, 0, 0, 0, 255, 0, 0, 0],
  [10, 0, 0, 0, 255, 0, 0, 0],
  [172, 16, 0, 0, 255, 240, 0, 0],
  [192, 168, 0, 0, 255, 255, 0, 0],
  [169, 254, 0, 0, 255, 255, 0, 0],
] as const

/**
 * A shop's own authority, which signs host certificates only, and only for names and addresses of local networks and for the
 * `hosts` that it is made for (name constraints, RFC 5280 4.2.1.10): whoever steals it cannot pass for the rest of the world on a tablet
 * that trusts it. Each tablet must be set to trust it.
 */
export const makeAuthority = async (
  name: string,
  now: Date,
  hosts: readonly string[] = [],
): Promise<KeyPair> => {
  const keys = await newKeys()
  const certificate = await blankCertificate(name, name, now, 10 * 365)
  certificate.extensions = [
    extension('2.5.29.19', new BasicConstraints({ cA: true, pathLenConstraint: 0 }).toSchema().toBER(false)),
    extension('2.5.29.30', namesOnly(hosts).toSchema().toBER(false)),
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

const namesOnly = (hosts: readonly string[]): NameConstraints => {
  const names = [...localNames, ...hosts.filter((host) => isIP(host) === 0)]
  const addresses = [
    ...localAddresses,
    ...hosts
      .filter((host) => isIP(host) === 4)
      .map((host) => [...host.split('.').map(Number), 255, 255, 255, 255]),
  ]
  const subtree = (base: GeneralName) => new GeneralSubtree({ base })
  return new NameConstraints({
    permittedSubtrees: [
      ...names.map((value) => subtree(new GeneralName({ type: 2, value }))),
      ...addresses.map((bytes) =>
        subtree(
          new GeneralName({ type: 7, value: new OctetString({ valueHex: new Uint8Array(bytes).buffer }) }),
        ),
      ),
    ],
  })
}

/**
 * Whether an authority may sign for a host: whether a certificate of its own for it holds for Node's TLS is decided by OpenSSL, here only
 * what it was made for is read. `unlimited`: it was made before authorities had limits.
 */
export const mayVouchFor = (authority: KeyPair, host: string): 'yes' | 'no' | 'unlimited' => {
  const read = Certificate.fromBER(derOf(authority.certificatePem))
  const found = read.extensions?.find(({ extnID }) => extnID === '2.5.29.30')?.parsedValue
  if (!(found instanceof NameConstraints)) return 'unlimited'
  const bases = (found.permittedSubtrees ?? []).map(({ base }) => base)
  const isWithin =
    isIP(host) === 0
      ? bases.some(({ type, value }) => type === 2 && (host === value || host.endsWith(`.${value}`)))
      : bases.some(
          ({ type, value }) => type === 7 && isAddressIn(host, new Uint8Array(value.valueBlock.valueHexView)),
        )
  return isWithin ? 'yes' : 'no'
}

const isAddressIn = (host: string, range: Uint8Array): boolean =>
  host
    .split('.')
    .map(Number)
    .every((part, index) => (part & (range[index + 4] ?? 255)) === range[index])

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
