import { createHash, webcrypto } from 'node:crypto'
import { ObjectIdentifier, OctetString, Sequence } from 'asn1js'
import {
  Certificate,
  CertificateChainValidationEngine,
  CryptoEngine,
  ExtKeyUsage,
  type SignedData,
  type SignerInfo,
} from 'pkijs'
import { readStampInfo, stampInfoId } from './stamp-info.ts'
import { sha256Id } from './stamp-request.ts'

/** Why a token proves nothing. */
export type StampFault =
  | 'malformed'
  | 'another-imprint'
  | 'signature-wrong'
  | 'not-for-stamps'
  | 'certificate-not-named'

/**
 * `unknown-authority`: the token holds, and its certificate leads to none of the roots that this machine trusts. `at`: the authority's
 * time, a UTC instant.
 */
export type StampVerdict =
  | { readonly is: 'good' | 'unknown-authority'; readonly authority: string; readonly at: string }
  | { readonly is: 'bad'; readonly why: StampFault }

const engine = new CryptoEngine({ name: 'node', crypto: webcrypto as Crypto })

/** Certificates of PEM text, as roots to judge by. Throws where one cannot be read. */
export const rootsOf = (pem: string): Certificate[] =>
  (pem.match(/-----BEGIN CERTIFICATE-----[^-]+-----END CERTIFICATE-----/g) ?? []).map((block) =>
    Certificate.fromBER(Buffer.from(block.replace(/-----[^-]+-----/g, ''), 'base64')),
  )

/**
 * Whether a token is a time-stamp over `bytes` (RFC 3161 2.4.2, RFC 5816): the imprint is their SHA-256, the signature holds, it
 * names its certificate, and that is for time-stamping alone and was valid at that time.
 */
export const judgeStamp = async (
  token: Uint8Array,
  bytes: Uint8Array,
  roots: readonly Certificate[],
): Promise<StampVerdict> => {
  const read = readStampInfo(token)
  if (read === null) return bad('malformed')
  const { signed, info } = read
  const imprint = Buffer.from(info.messageImprint.hashedMessage.valueBlock.valueHexView)
  if (
    info.messageImprint.hashAlgorithm.algorithmId !== sha256Id ||
    !imprint.equals(createHash('sha256').update(bytes).digest())
  )
    return bad('another-imprint')
  const [signer] = signed.signerInfos
  if (signer === undefined || !signsStampInfo(signer)) return bad('malformed')
  const certificate = await signerOf(signed, bytes)
  if (certificate === null) return bad('signature-wrong')
  if (!isNamedBy(signer, certificate)) return bad('certificate-not-named')
  if (!isForStampsAlone(certificate)) return bad('not-for-stamps')
  const leadsToRoot = await leadsTo(roots, signed, certificate, info.genTime)
  return {
    is: leadsToRoot ? 'good' : 'unknown-authority',
    authority: nameOf(certificate),
    at: info.genTime.toISOString(),
  }
}

const bad = (why: StampFault): StampVerdict => ({ is: 'bad', why })

const valuesOf = (signer: SignerInfo, attribute: string): readonly unknown[] =>
  signer.signedAttrs?.attributes.find(({ type }) => type === attribute)?.values ?? []

/** The attribute that says what is signed is signed itself (RFC 5652, 11.1). */
const signsStampInfo = (signer: SignerInfo): boolean => {
  const [type] = valuesOf(signer, '1.2.840.113549.1.9.3')
  return type instanceof ObjectIdentifier && type.valueBlock.toString() === stampInfoId
}

/** The certificate whose key has signed; `null` where the signature does not hold. */
const signerOf = async (signed: SignedData, bytes: Uint8Array): Promise<Certificate | null> => {
  try {
    const checked = await signed.verify(
      { signer: 0, data: new Uint8Array(bytes).buffer, extendedMode: true },
      engine,
    )
    return checked.signatureVerified === true ? (checked.signerCertificate ?? null) : null
  } catch {
    return null
  }
}

const derOf = (certificate: Certificate): Uint8Array =>
  new Uint8Array(certificate.toSchema(false).toBER(false))

/**
 * SigningCertificateV2 names the certificate by its SHA-256 (RFC 5035, 4). The older form by SHA-1 alone is not taken: RFC 5816 has
 * replaced it.
 */
const isNamedBy = (signer: SignerInfo, certificate: Certificate): boolean => {
  const [attribute] = valuesOf(signer, '1.2.840.113549.1.9.16.2.47')
  const [ids] = sequenceOf(attribute)
  const [first] = sequenceOf(ids)
  const parts = sequenceOf(first)
  const algorithm = sequenceOf(parts[0])[0]
  const isSha256 =
    parts[0] instanceof OctetString ||
    (algorithm instanceof ObjectIdentifier && algorithm.valueBlock.toString() === sha256Id)
  const hash = parts.find((part) => part instanceof OctetString)
  return (
    isSha256 &&
    hash instanceof OctetString &&
    Buffer.from(hash.valueBlock.valueHexView).equals(createHash('sha256').update(derOf(certificate)).digest())
  )
}

const sequenceOf = (value: unknown): readonly unknown[] =>
  value instanceof Sequence ? value.valueBlock.value : []

/** Extended key usage: critical, and time-stamping (id-kp-timeStamping) the only one (RFC 3161, 2.3). */
const isForStampsAlone = (certificate: Certificate): boolean => {
  const found = certificate.extensions?.find(({ extnID }) => extnID === '2.5.29.37')
  return (
    found?.critical === true &&
    found.parsedValue instanceof ExtKeyUsage &&
    found.parsedValue.keyPurposes.join() === '1.3.6.1.5.5.7.3.8'
  )
}

/** Path validation (RFC 5280, 6) at the time of the stamp. Nobody is asked about revoked certificates. */
const leadsTo = async (
  roots: readonly Certificate[],
  signed: SignedData,
  certificate: Certificate,
  at: Date,
): Promise<boolean> => {
  const along = (signed.certificates ?? []).filter((item) => item instanceof Certificate)
  const chain = new CertificateChainValidationEngine({
    trustedCerts: [...roots],
    certs: [...along.filter((item) => !isSame(item, certificate)), certificate],
    checkDate: at,
  })
  const { result } = await chain
    .verify({ passedWhenNotRevValues: true }, engine)
    .catch(() => ({ result: false }))
  return result
}

const isSame = (one: Certificate, other: Certificate): boolean =>
  Buffer.from(derOf(one)).equals(Buffer.from(derOf(other)))

/** The common name of whom a certificate was made for, or else the organization. */
const nameOf = ({ subject }: Certificate): string => {
  const named = (type: string) => subject.typesAndValues.find((item) => item.type === type)
  const value = (named('2.5.4.3') ?? named('2.5.4.10'))?.value.valueBlock.value
  return typeof value === 'string' && value !== '' ? value.slice(0, 100) : '?'
}
