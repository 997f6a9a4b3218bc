import { hash, randomBytes } from 'node:crypto'

/** 32 random bytes as text for a cookie or a link: a credential. Only its digest is stored. */
export const newToken = (): string => randomBytes(32).toString('base64url')

export const tokenDigest = (token: string): string => hash('sha256', token, 'hex')
