import { createHash, randomBytes } from 'node:crypto'
import { fromBER, Integer, Null, OctetString, Sequence } from 'asn1js'
import { AlgorithmIdentifier, MessageImprint, PKIStatus, TimeStampReq, TimeStampResp } from 'pkijs'
import { readStampInfo } from './stamp-info.ts'

/** What is sent to a time-stamp authority, in DER, and the number by which its answer is told from an earlier one. */
export type StampRequest = { readonly der: Uint8Array; readonly nonce: Uint8Array }

export type StampReply =
  | { readonly is: 'token'; readonly token: Uint8Array }
  | { readonly is: 'refused'; readonly said: string }
  | { readonly is: 'malformed' }
  | { readonly is: 'another-nonce' }

/** SHA-256 (FIPS 180-4) as ASN.1 names it (RFC 5754, 2.2). */
export const sha256Id = '2.16.840.1.101.3.4.2.1'

/**
 * A request to stamp bytes: their SHA-256, a nonce, and the wish that the authority's certificate comes along (TimeStampReq, RFC 3161
 * 2.4.1).
 */
export const makeStampRequest = (bytes: Uint8Array): StampRequest => {
  const nonce = randomBytes(16)
  // Positive and without leading zeros, so that it is written in one way only.
  nonce[0] = ((nonce[0] ?? 0) & 0x7f) | 0x40
  const request = new TimeStampReq({
    version: 1,
    messageImprint: new MessageImprint({
      hashAlgorithm: new AlgorithmIdentifier({ algorithmId: sha256Id, algorithmParams: new Null() }),
      hashedMessage: new OctetString({ valueHex: createHash('sha256').update(bytes).digest() }),
    }),
    nonce: new Integer({ valueHex: nonce }),
    certReq: true,
  })
  return { der: new Uint8Array(request.toSchema().toBER(false)), nonce }
}

/**
 * Reads what an authority answered (TimeStampResp, RFC 3161 2.4.2): its token as it was sent, if it was granted and answers this
 * request. What the token is worth, `judgeStamp` says.
 */
export const readStampReply = (reply: Uint8Array, { nonce }: StampRequest): StampReply => {
  try {
    const { status } = TimeStampResp.fromBER(Uint8Array.from(reply))
    if (status.status !== PKIStatus.granted && status.status !== PKIStatus.grantedWithMods)
      return { is: 'refused', said: printable((status.statusStrings ?? []).map(textOf).join(' ')) }
    const parts = fromBER(reply).result
    const token = parts instanceof Sequence ? parts.valueBlock.value[1] : undefined
    if (token === undefined) return { is: 'malformed' }
    const bytes = Uint8Array.from(token.valueBeforeDecodeView)
    const answered = readStampInfo(bytes)?.info.nonce
    if (
      answered === undefined ||
      !nonce.every((byte, index) => answered.valueBlock.valueHexView[index] === byte)
    )
      return { is: 'another-nonce' }
    return { is: 'token', token: bytes }
  } catch {
    return { is: 'malformed' }
  }
}

const textOf = ({ valueBlock }: { readonly valueBlock: { readonly value: string } }): string =>
  valueBlock.value

/** A stranger's words, for a log. */
const printable = (words: string): string => words.replace(/[^\p{L}\p{N}\p{P} ]/gu, ' ').slice(0, 200)
