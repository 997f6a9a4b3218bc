import { projection } from './projection.ts'

/** The reports of an order by their number, each with the digest of its file. */
export const sealedReportRows = projection({
  name: 'report',
  columns: { entry_id: 'uuid', number: 'text', sha256: 'text', sealed_at: 'timestamptz' },
  rowsOf: ({ entries }) =>
    entries.flatMap((entry) =>
      entry.kind === 'report.sealed' && entry.given.reportNumber
        ? [
            {
              entry_id: entry.id,
              number: entry.given.reportNumber,
              sha256: entry.payload.pdfSha256,
              sealed_at: entry.receivedAt,
            },
          ]
        : [],
    ),
  sql: (from, rebuilding) => `report as (
    insert into sealed_reports (shop_id, number, order_id, entry_id, sha256, sealed_at)
    select shop_id, number, order_id, entry_id, sha256, sealed_at from ${from}
    ${rebuilding ? 'on conflict do nothing' : ''}
  )`,
  // A sealed report's row is never changed or removed: a missing one is added, a differing one is for verifying to name.
  rebuild: 'missing-rows',
})
