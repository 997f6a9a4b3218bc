/**
 * Something as it lies on the tablet: sealed with AES-256-GCM (NIST SP 800-38D). `plain` only where the browser has no
 * cryptography, as over plain HTTP.
 */
export type Kept =
  | { readonly is: 'plain'; readonly value: unknown }
  | { readonly is: 'sealed'; readonly nonce: Uint8Array<ArrayBuffer>; readonly bytes: ArrayBuffer }
