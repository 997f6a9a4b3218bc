import { createPublicKey, type KeyObject, verify } from 'node:crypto'

/** A tablet's public key (SubjectPublicKeyInfo in base64); `null` where this is no point of P-256. */
export const readPublicKey = (publicKey: string): KeyObject | null => {
  try {
    const key = createPublicKey({ key: Buffer.from(publicKey, 'base64'), format: 'der', type: 'spki' })
    return key.asymmetricKeyDetails?.namedCurve === 'prime256v1' ? key : null
  } catch {
    return null
  }
}

/** Whether this tablet's key signed this text: ECDSA with SHA-256, r and s in base64url. */
export const isSignedBy = (publicKey: string, text: string, signature: string): boolean => {
  const key = readPublicKey(publicKey)
  return (
    key !== null &&
    verify(
      'sha256',
      Buffer.from(text),
      { key, dsaEncoding: 'ieee-p1363' },
      Buffer.from(signature, 'base64url'),
    )
  )
}
