import { fromBER } from 'asn1js'
import { Attribute, ContentInfo, SignedAndUnsignedAttributes, SignedData } from 'pkijs'

/** id-aa-signatureTimeStampToken (RFC 3161, Appendix A; ETSI EN 319 142-1, 6.3). */
const stampAttribute = '1.2.840.113549.1.9.16.2.14'

/** A token larger than this is not taken: the room in the file is laid out before anybody is asked. */
export const mostTokenBytes = 16 * 1024

type Signature = {
  /** The place of the hexadecimal digits. */
  readonly from: number
  readonly to: number
  readonly signed: SignedData
  readonly value: Uint8Array
}

/** What a file's time-stamp is over: the value of its signature. `null` where the file holds no signature over all of it. */
export const signatureValueOf = (pdf: Uint8Array): Uint8Array | null => signatureIn(pdf)?.value ?? null

/** Whether two signed files are the same byte for byte, but for the signature of each. */
export const isSameButForSignature = (one: Uint8Array, other: Uint8Array): boolean => {
  const [first, second] = [signatureIn(one), signatureIn(other)]
  if (first === null || second === null || first.from !== second.from || first.to !== second.to) return false
  const without = (pdf: Uint8Array) => Buffer.concat([pdf.subarray(0, first.from), pdf.subarray(first.to)])
  return without(one).equals(without(other))
}

/** The time-stamp in a file's signature, if it holds one. */
export const stampIn = (pdf: Uint8Array): Uint8Array | null => {
  const [found] =
    signatureIn(pdf)?.signed.signerInfos[0]?.unsignedAttrs?.attributes.filter(
      ({ type }) => type === stampAttribute,
    ) ?? []
  return found?.values[0] === undefined ? null : new Uint8Array(found.values[0].toBER(false))
}

/**
 * The same file with a time-stamp in its signature, outside of what the signature covers (PAdES B-T). `null` where it does not fit or
 * the file is not signed.
 */
export const withStamp = (pdf: Uint8Array, token: Uint8Array): Uint8Array | null => {
  const found = signatureIn(pdf)
  const signer = found?.signed.signerInfos[0]
  if (found === null || signer === undefined) return null
  const value = fromBER(token).result
  // One that would be written in another way than it was signed is kept beside the file instead.
  if (!Buffer.from(value.toBER(false)).equals(token)) return null
  signer.unsignedAttrs = new SignedAndUnsignedAttributes({
    type: 1,
    attributes: [new Attribute({ type: stampAttribute, values: [value] })],
  })
  const content = new ContentInfo({ contentType: ContentInfo.SIGNED_DATA, content: found.signed.toSchema() })
  const digits = Buffer.from(content.toSchema().toBER(false)).toString('hex').toUpperCase()
  const room = found.to - found.from
  if (digits.length > room) return null
  const stamped = Buffer.from(pdf)
  stamped.write(digits.padEnd(room, '0'), found.from, 'latin1')
  return stamped
}

/** The one signature of a file that it covers from its first byte to its last, but for itself. */
const signatureIn = (pdf: Uint8Array): Signature | null => {
  const bytes = Buffer.from(pdf.buffer, pdf.byteOffset, pdf.byteLength)
  const at = bytes.lastIndexOf('/ByteRange')
  const range = /^\/ByteRange\s*\[\s*0\s+(\d{1,12})\s+(\d{1,12})\s+(\d{1,12})\s*\]/.exec(
    bytes.toString('latin1', at, at + 80),
  )
  if (at < 0 || range === null) return null
  const [hole = 0, after = 0, rest = 0] = range.slice(1).map(Number)
  if (after + rest !== bytes.length || hole >= after) return null
  try {
    const der = Buffer.from(bytes.toString('latin1', hole + 1, after - 1), 'hex')
    const { offset, result } = fromBER(der)
    if (offset <= 0) return null
    const signed = new SignedData({ schema: new ContentInfo({ schema: result }).content })
    const value = signed.signerInfos[0]?.signature.valueBlock.valueHexView
    return value === undefined
      ? null
      : { from: hole + 1, to: after - 1, signed, value: Uint8Array.from(value) }
  } catch {
    return null
  }
}
