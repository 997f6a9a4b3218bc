import * as z from 'zod/mini'

/** The public half of a tablet's key: P-256, SubjectPublicKeyInfo (RFC 5480) in base64. */
export const PublicKey = z.string().check(z.regex(/^[A-Za-z0-9+/]{122}==$/))

/** ECDSA over P-256 with SHA-256: r and s, 32 bytes each (IEEE P1363), in base64url. */
export const TabletSignature = z.string().check(z.regex(/^[A-Za-z0-9_-]{86}$/))
