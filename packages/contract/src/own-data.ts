import * as z from 'zod/mini'
import { csvPatienceSeconds } from './csv.ts'
import { endpoint } from './endpoint.ts'
import { Id, Instant } from './identity.ts'

/** One thing that the shop keeps of a customer: about which record or order, when it was written, what it is and what it says. */
export const OwnDatum = z.strictObject({
  about: z.string(),
  at: z.nullable(Instant),
  what: z.string(),
  value: z.string(),
})
export type OwnDatum = z.infer<typeof OwnDatum>

/** What `data.json` holds. */
export type OwnDataFile = { readonly asOf: string; readonly data: readonly OwnDatum[] }

const access = { who: 'desk', roles: ['owner'] } as const
const params = z.strictObject({ customerId: Id })

export const copyOwnData = endpoint({
  operationId: 'copyOwnData',
  summary:
    'A copy of all that is kept of one customer, for the customer, as one ZIP file: data.json and data.csv, which hold the same, sealed reports as PDF and photos as they are shown. Nothing of earlier or later owners of a vehicle is in it. That it was made is recorded.',
  method: 'POST',
  path: '/api/customers/:customerId/own-data',
  access: { ...access, proof: 'recent' },
  params,
  patienceSeconds: csvPatienceSeconds,
  replies: { 201: { contentType: 'application/zip' } },
  problems: ['CUSTOMER_NOT_FOUND'],
})

export const listOwnDataCopies = endpoint({
  operationId: 'listOwnDataCopies',
  summary: 'When copies of a customer’s data were made, and by whom; newest first.',
  method: 'GET',
  path: '/api/customers/:customerId/own-data',
  access,
  params,
  replies: { 200: z.strictObject({ copies: z.array(z.strictObject({ at: Instant, by: z.string() })) }) },
  problems: ['CUSTOMER_NOT_FOUND'],
})
