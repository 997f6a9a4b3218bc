import type { Pool } from 'pg'
import { type Authority, sessionsIn, tabletsIn } from '../../../core/writer.ts'

/** What may have kept entries from being written, beside a head that moved and facts that changed. */
export type Stale = {
  /** Whether a session is over or its tablet was put out, or a tablet was; of those that were asked about. */
  readonly isOver: (authority: Authority) => boolean
  /** Ids that were refused before. */
  readonly refusedIds: ReadonlySet<string>
  /** Ids of entries that are in a ledger, with their order. */
  readonly takenIds: ReadonlyMap<string, string>
}

export const readStale = async (
  pool: Pool,
  shopId: string,
  asked: {
    readonly entryIds: readonly string[]
    readonly authorities: readonly Authority[]
    readonly at: Date
  },
): Promise<Stale> => {
  const { rows } = await pool.query<{
    sessions: string[] | null
    tablets: string[] | null
    refused: string[] | null
    taken: { id: string; order: string }[] | null
  }>({
    name: 'stale',
    text: `select
      (select array_agg(s.id::text) from sessions s left join devices d on d.shop_id = s.shop_id and d.id = s.device_id
        where s.shop_id = $1 and s.id = any ($2::uuid[]) and s.ended_at is null and s.expires_at > $4
          and (s.device_id is null or d.revoked_at is null)) as sessions,
      (select array_agg(id::text) from devices where shop_id = $1 and id = any ($5::uuid[]) and revoked_at is null) as tablets,
      (select array_agg(id::text) from refused_entries where shop_id = $1 and id = any ($3::uuid[])) as refused,
      (select json_agg(json_build_object('id', id, 'order', order_id)) from entries
        where shop_id = $1 and id = any ($3::uuid[])) as taken`,
    values: [shopId, sessionsIn(asked.authorities), asked.entryIds, asked.at, tabletsIn(asked.authorities)],
  })
  const [row] = rows
  const sessions = new Set(row?.sessions ?? [])
  const tablets = new Set(row?.tablets ?? [])
  return {
    isOver: (authority) =>
      authority.by === 'session' ? !sessions.has(authority.sessionId) : !tablets.has(authority.deviceId),
    refusedIds: new Set(row?.refused ?? []),
    takenIds: new Map((row?.taken ?? []).map(({ id, order }) => [id, order])),
  }
}
