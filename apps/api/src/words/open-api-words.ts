/** What the OpenAPI document says beside the contract's own summaries. */
export const openApiWords = {
  service: 'The service of one shop. Every error is a problem (RFC 9457) with a stable code.',
  ifMatch: 'The version that was read, as "3".',
  idempotencyKey: 'Made once for what the person does.',
  file: 'The file, byte for byte.',
} as const
