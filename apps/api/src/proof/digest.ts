import { createHash, createPrivateKey, createPublicKey, type KeyObject, sign, verify } from 'node:crypto'
import { canonicalText } from '@bayledger/ledger/digests'
import { Day, Digest, Id, Instant } from '@bayledger/ledger/text'
import * as z from 'zod/mini'

/** The newest entry of an order that moved since the digest before. */
export const MovedOrder = z.strictObject({ orderId: Id, seq: z.int().check(z.positive()), hash: Digest })
export type MovedOrder = z.infer<typeof MovedOrder>

const content = {
  format: z.literal(1),
  shopId: Id,
  /** 1, 2, 3 … for each shop, without gaps. */
  number: z.int().check(z.positive()),
  /** The business day, in the shop's zone, up to whose end (or to the stop on it) this goes. */
  day: Day,
  madeAt: Instant,
  /** SHA-256 of the digest before; 64 zeros for the first. */
  previous: Digest,
  /** In order of `orderId`. */
  orders: z.array(MovedOrder),
}

export const DigestContent = z.strictObject(content)
export type DigestContent = z.infer<typeof DigestContent>

/** One file. `hash` is SHA-256 of the content's canonical text, `signature` ECDSA over P-256 of the same bytes. */
export const DigestFile = z.strictObject({
  ...content,
  hash: Digest,
  /** SHA-256 of the public key (SubjectPublicKeyInfo), which says whose signature this is. */
  signedBy: Digest,
  signature: z.string().check(z.regex(/^[A-Za-z0-9+/]{86}==$/)),
})
export type DigestFile = z.infer<typeof DigestFile>

/** Signs digests: an EC P-256 private key as PEM text, with the name of its public half. */
export type DigestKey = { readonly privateKeyPem: string; readonly fingerprint: string }

/** SHA-256 of a public key's SubjectPublicKeyInfo, lower-case hexadecimal; a private key is named by its public half. */
export const fingerprintOf = (privateKeyPem: string): string =>
  createHash('sha256')
    .update(publicHalf(privateKeyPem).export({ type: 'spki', format: 'der' }))
    .digest('hex')

const publicHalf = (privateKeyPem: string): KeyObject => createPublicKey(createPrivateKey(privateKeyPem))

const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex')

/** Numbers, hashes and signs what moved. */
export const signDigest = (content: DigestContent, key: DigestKey): DigestFile => {
  const text = canonicalText(content)
  const signature = sign('sha256', Buffer.from(text), { key: key.privateKeyPem, dsaEncoding: 'ieee-p1363' })
  return {
    ...content,
    hash: sha256(text),
    signedBy: key.fingerprint,
    signature: signature.toString('base64'),
  }
}

/** Whether a file is what the shop's key signed: another key, or a changed byte, is detected. */
export const judgeDigest = (
  { hash, signedBy, signature, ...content }: DigestFile,
  key: DigestKey,
): 'signed' | 'other-key' | 'changed' => {
  const text = canonicalText(content)
  if (signedBy !== key.fingerprint) return 'other-key'
  const isSigned = verify(
    'sha256',
    Buffer.from(text),
    { key: publicHalf(key.privateKeyPem), dsaEncoding: 'ieee-p1363' },
    Buffer.from(signature, 'base64'),
  )
  return isSigned && sha256(text) === hash ? 'signed' : 'changed'
}
