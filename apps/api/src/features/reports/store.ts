import type { Pool } from 'pg'

export type StoredReport = {
  readonly number: string
  readonly orderId: string
  readonly entryId: string
  readonly sha256: string
  readonly sealedAt: Date
}

const columns = `number, order_id as "orderId", entry_id as "entryId", sha256, sealed_at as "sealedAt"`

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

/** Whether the order's customer was erased since it was opened. */
export const isOfErasedPerson = async (pool: Pool, shopId: string, orderId: string): Promise<boolean> => {
  const { rows } = await pool.query({
    name: 'order-of-erased',
    text: `select from order_heads h join customers c on c.shop_id = h.shop_id and c.id = h.customer_id
      where h.shop_id = $1 and h.order_id = $2 and h.opened_at <= c.erased_at`,
    values: [shopId, orderId],
  })
  return rows.length > 0
}

/** The public keys of every shop, by shop, the newest of each first. */
export const listSigningKeys = async (
  pool: Pool,
): Promise<{ readonly shop: string; readonly fingerprint: string; readonly since: Date }[]> => {
  const { rows } = await pool.query<{ shop: string; fingerprint: string; since: Date }>({
    name: 'signing-keys',
    text: `select shops.name as shop, fingerprint, since from signing_keys join shops on shops.id = signing_keys.shop_id
      order by shops.created_at, shops.id, number desc`,
  })
  return rows
}
