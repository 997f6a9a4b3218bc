import type { Pool } from 'pg'

export type StoredReport = {
  readonly number: string
  readonly orderId: string
  readonly entryId: string
  readonly sha256: string
  readonly sealedAt: Date
}

const columns = `number, order_id as "orderId", entry_id as "entryId", sha256, sealed_at as "sealedAt"`

/** Stores bytes under their digest; storing the same bytes again changes nothing. */
export const storeBlob = async (
  pool: Pool,
  shopId: string,
  blob: {
    readonly sha256: string
    readonly mediaType: string
    readonly bytes: Uint8Array
    readonly at: Date
  },
): Promise<void> => {
  await pool.query({
    name: 'store-blob',
    text: `insert into blobs (shop_id, sha256, media_type, bytes, created_at) values ($1, $2, $3, $4, $5)
      on conflict do nothing`,
    values: [shopId, blob.sha256, blob.mediaType, Buffer.from(blob.bytes), blob.at],
  })
}

export const findBlobBytes = async (
  pool: Pool,
  shopId: string,
  sha256: string,
): Promise<Uint8Array | null> => {
  const { rows } = await pool.query<{ bytes: Buffer }>({
    name: 'blob-bytes',
    text: 'select bytes from blobs where shop_id = $1 and sha256 = $2',
    values: [shopId, sha256],
  })
  return rows[0]?.bytes ?? null
}

export const listBlobDigests = async (
  pool: Pool,
  shopId: string,
  digests: readonly string[],
): Promise<ReadonlySet<string>> => {
  if (digests.length === 0) return new Set()
  const { rows } = await pool.query<{ sha256: string }>({
    name: 'blob-digests',
    text: 'select sha256 from blobs where shop_id = $1 and sha256 = any ($2::text[])',
    values: [shopId, digests],
  })
  return new Set(rows.map(({ sha256 }) => sha256))
}

/** An order's reports, oldest first. */
export const listReportsOf = async (pool: Pool, shopId: string, orderId: string): Promise<StoredReport[]> => {
  const { rows } = await pool.query<StoredReport>({
    name: 'reports-of-order',
    text: `select ${columns} from sealed_reports where shop_id = $1 and order_id = $2 order by sealed_at, number`,
    values: [shopId, orderId],
  })
  return rows
}

export const findReport = async (
  pool: Pool,
  shopId: string,
  number: string,
): Promise<StoredReport | null> => {
  const { rows } = await pool.query<StoredReport>({
    name: 'report-by-number',
    text: `select ${columns} from sealed_reports where shop_id = $1 and number = $2`,
    values: [shopId, number],
  })
  return rows[0] ?? null
}

/** A report of any shop of this database: to check a file, one need not know which shop sealed it. */
export const findReportAnywhere = async (
  pool: Pool,
  by: { readonly number: string } | { readonly sha256: string },
): Promise<(StoredReport & { readonly shopId: string }) | null> => {
  const [column, value] = 'number' in by ? ['number', by.number] : ['sha256', by.sha256]
  const { rows } = await pool.query<StoredReport & { shopId: string }>({
    name: `report-anywhere-by-${column}`,
    text: `select shop_id as "shopId", ${columns} from sealed_reports
      where shop_id in (select id from shops) and ${column} = $1 limit 1`,
    values: [value],
  })
  return rows[0] ?? null
}
