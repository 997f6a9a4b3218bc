import type { CsvApplied, CsvApply, CsvPreview, CsvProgress } from '@bayledger/contract/csv'
import type { CsvEndpoints } from '@bayledger/contract/csv-endpoints'
import type { Endpoint } from '@bayledger/contract/endpoint'
import { getImportProgress } from '@bayledger/contract/imports'
import { call } from './api-client.ts'

/** What an import would do, as the service tells it. */
export type CsvShown = CsvPreview

/** The calls by which a list goes out as CSV and comes back. `key`: made once for a file, and what its progress goes by. */
export type CsvSource = {
  readonly write: () => Promise<Blob>
  readonly preview: (file: Blob, key: string) => Promise<CsvPreview>
  readonly apply: (file: Blob, apply: Omit<CsvApply, 'watch'>, key: string) => Promise<CsvApplied>
  readonly progress: (key: string) => Promise<CsvProgress | null>
}

/** What the contract declares for one list, as calls. */
export const csvSource = (routes: Pick<CsvEndpoints, 'write' | 'preview' | 'apply'>): CsvSource => {
  // One cast for all lists, as for records: the compiler cannot follow the contract's schemas through a parameter.
  const ask = call as unknown as (route: Endpoint, given: object) => Promise<unknown>
  return {
    write: () => ask(routes.write, {}) as Promise<Blob>,
    preview: (body, key) => ask(routes.preview, { body, query: { watch: key } }) as Promise<CsvPreview>,
    apply: (body, apply, idempotencyKey) =>
      ask(routes.apply, {
        body,
        query: { ...apply, watch: idempotencyKey },
        idempotencyKey,
      }) as Promise<CsvApplied>,
    progress: async (key) => (await call(getImportProgress, { params: { watch: key } })).progress,
  }
}
