import type { CsvApplied, CsvApply, CsvPreview } from '@bayledger/contract/csv'
import type { Endpoint } from '@bayledger/contract/endpoint'
import { call } from './api-client.ts'

/** What an import would do, as the service tells it. */
export type CsvShown = CsvPreview

/** The three calls by which a list goes out as CSV and comes back. */
export type CsvSource = {
  readonly write: () => Promise<Blob>
  readonly preview: (file: Blob) => Promise<CsvPreview>
  readonly apply: (file: Blob, apply: CsvApply, idempotencyKey: string) => Promise<CsvApplied>
}

type CsvRoutes = { readonly write: Endpoint; readonly preview: Endpoint; readonly apply: Endpoint }

/** What the contract declares for one list, as calls. */
export const csvSource = (routes: CsvRoutes): CsvSource => {
  // One cast for all lists, as for records: the compiler cannot follow the contract's schemas through a parameter.
  const ask = call as unknown as (route: Endpoint, given: object) => Promise<unknown>
  return {
    write: () => ask(routes.write, {}) as Promise<Blob>,
    preview: (body) => ask(routes.preview, { body }) as Promise<CsvPreview>,
    apply: (body, query, idempotencyKey) =>
      ask(routes.apply, { body, query, idempotencyKey }) as Promise<CsvApplied>,
  }
}
