import { deskRoles } from '@bayledger/ledger/role'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Digest, Id, Instant } from './identity.ts'

export const SealedReport = z.strictObject({
  number: z.string(),
  seq: z.int(),
  sha256: Digest,
  byteLength: z.int(),
  sealedAt: Instant,
})
export type SealedReport = z.infer<typeof SealedReport>

export const sealOrderReport = endpoint({
  operationId: 'sealOrderReport',
  summary:
    'Compose the report from the whole ledger, seal it and enter it; sending the same id again answers the same.',
  method: 'POST',
  path: '/api/orders/:orderId/reports',
  access: { who: 'desk' },
  params: z.strictObject({ orderId: Id }),
  body: z.strictObject({ entryId: Id }),
  replies: { 201: SealedReport },
  problems: ['ORDER_NOT_FOUND', 'ORDER_READ_ONLY', 'REPORT_NOT_DUE', 'ENTRY_REFUSED'],
})

export const getReport = endpoint({
  operationId: 'getReport',
  summary: 'A sealed report, byte for byte.',
  method: 'GET',
  path: '/api/orders/:orderId/reports/:number',
  /** A report prints prices. */
  access: { who: 'desk', roles: deskRoles },
  params: z.strictObject({ orderId: Id, number: z.string().check(z.maxLength(40)) }),
  replies: { 200: { contentType: 'application/pdf' } },
  problems: ['REPORT_NOT_FOUND'],
})

/**
 * Who confirmed that the report existed at a time (RFC 3161). `within`: the signature in the file holds it; `beside`: it was made later,
 * over the whole file, and is kept by the service; then `token` is it, in base64. `unknown-authority`: it holds, and nobody here knows
 * whose certificate that is.
 */
const ReportStamp = z.strictObject({
  where: z.enum(['within', 'beside']),
  verdict: z.enum(['good', 'unknown-authority', 'bad']),
  authority: z.nullable(z.string()),
  at: z.nullable(Instant),
  token: z.nullable(z.string()),
})

/** `changed`: the file says that it is a report of this shop, but differs from what the shop sealed. */
export const ReportCheck = z.strictObject({
  verdict: z.enum(['genuine', 'changed', 'unknown']),
  words: z.string(),
  number: z.nullable(z.string()),
  sealedAt: z.nullable(Instant),
  supersededBy: z.nullable(z.string()),
  /** `null` where there is none, or the file is not genuine. */
  stamp: z.nullable(ReportStamp),
})
export type ReportCheck = z.infer<typeof ReportCheck>

export const checkReport = endpoint({
  operationId: 'checkReport',
  summary: 'Is this file a report of this shop, untouched? Send the PDF itself, or the SHA-256 of its bytes.',
  method: 'POST',
  path: '/api/report-checks',
  access: { who: 'public' },
  body: z.union([z.strictObject({ sha256: Digest }), z.instanceof(Uint8Array)]),
  bodyIs: 'application/pdf',
  bodyLimitBytes: 20 * 1024 * 1024,
  triesPerMinute: 30,
  replies: { 200: ReportCheck },
  problems: [],
})

/** The public keys of one shop, the newest first: what seals from `since` until the one before it in this list. */
const ShopSigningKeys = z.strictObject({
  shop: z.string(),
  keys: z.array(z.strictObject({ fingerprint: Digest, since: Instant })),
})
export type ShopSigningKeys = z.infer<typeof ShopSigningKeys>

export const listSigningKeys = endpoint({
  operationId: 'listSigningKeys',
  summary:
    'The keys with which the reports of each shop were and are sealed: SHA-256 of the public key, as each report prints it.',
  method: 'GET',
  path: '/api/signing-keys',
  access: { who: 'public' },
  replies: { 200: z.strictObject({ shops: z.array(ShopSigningKeys) }) },
  problems: [],
})
