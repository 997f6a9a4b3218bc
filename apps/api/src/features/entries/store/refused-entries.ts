import type { DeliveryRefusal, Refusal } from '@bayledger/ledger/admit/refusal'
import type { Author } from '@bayledger/ledger/entry'
import type { Pool } from 'pg'

/** The code of a refusal with the values that its words are made from. */
export type Reason = Pick<Refusal, 'code' | 'values'> | Pick<DeliveryRefusal, 'code' | 'values'>

export type RefusedRow = Reason & {
  readonly id: string
  readonly orderId: string
  readonly orderNumber: string | null
  readonly kind: string
  readonly receivedAt: Date
  readonly writtenBy: Author
  /** `null` where it is longer than was asked for. */
  readonly body: unknown
  readonly bodyBytes: number
}

type KeptRefusal = Reason &
  Pick<RefusedRow, 'id' | 'orderId' | 'kind' | 'body' | 'receivedAt' | 'writtenBy'> & {
    readonly deviceId: string | null
  }

/**
 * Keeps what a known sender wrote and the ledger did not take. A refusal is final for its id: the first stays. Gives whether
 * it was kept: not where it was kept before, or where another delivery of the same entry was written meanwhile.
 */
export const keepRefused = async (pool: Pool, shopId: string, refused: KeptRefusal): Promise<boolean> => {
  const { rows } = await pool.query({
    name: 'keep-refused',
    text: `insert into refused_entries (shop_id, id, order_id, kind, body, code, "values", received_at, written_by, device_id)
      select $1::uuid, $2::uuid, $3::uuid, $4, $5::json, $6, $7::json, $8::timestamptz, $9::json, $10::uuid
      where not exists (select from entries where shop_id = $1::uuid and id = $2::uuid)
      on conflict do nothing returning id`,
    values: [
      shopId,
      refused.id,
      refused.orderId,
      refused.kind,
      JSON.stringify(refused.body),
      refused.code,
      JSON.stringify(refused.values),
      refused.receivedAt,
      JSON.stringify(refused.writtenBy),
      refused.deviceId,
    ],
  })
  return rows.length === 1
}

const selectWith = (body: string) =>
  `select r.id, r.order_id as "orderId", h.number as "orderNumber", r.kind, r.code, r."values",
    r.received_at as "receivedAt", r.written_by as "writtenBy", ${body} as body,
    octet_length(r.body::text) as "bodyBytes"
  from refused_entries r left join order_heads h on h.shop_id = r.shop_id and h.order_id = r.order_id
  where r.shop_id = $1`

export const findRefused = async (pool: Pool, shopId: string, id: string): Promise<RefusedRow | null> => {
  const { rows } = await pool.query<RefusedRow>({
    name: 'find-refused',
    text: `${selectWith('r.body')} and r.id = $2`,
    values: [shopId, id],
  })
  return rows[0] ?? null
}

/** So many of the unsettled ones, oldest first; those of one writer where one is named. */
export const listUnsettled = async (
  pool: Pool,
  shopId: string,
  {
    staffId,
    most,
    longestBodyBytes,
  }: { readonly staffId: string | null; readonly most: number; readonly longestBodyBytes: number },
): Promise<RefusedRow[]> => {
  const { rows } = await pool.query<RefusedRow>({
    name: 'unsettled-refused',
    text: `${selectWith('case when octet_length(r.body::text) <= $4 then r.body end')} and r.settled_at is null and ($2::text is null or r.written_by ->> 'staffId' = $2)
      order by r.received_at, r.id limit $3`,
    values: [shopId, staffId, most, longestBodyBytes],
  })
  return rows
}

export const markSettled = async (pool: Pool, shopId: string, id: string, at: Date): Promise<boolean> => {
  const { rowCount } = await pool.query({
    name: 'settle-refused',
    text: 'update refused_entries set settled_at = coalesce(settled_at, $3) where shop_id = $1 and id = $2',
    values: [shopId, id, at],
  })
  return rowCount === 1
}
