import type { Pool } from 'pg'

/** What may have kept entries from being written, beside a head that moved and facts that changed. */
export type Stale = {
  /** Sessions that are over, or whose tablet was revoked. */
  readonly endedSessions: ReadonlySet<string>
  /** Ids that were refused before. */
  readonly refusedIds: ReadonlySet<string>
  /** Ids of entries that are in a ledger, with their order. */
  readonly takenIds: ReadonlyMap<string, string>
}

export const readStale = async (
  pool: Pool,
  shopId: string,
  asked: { readonly entryIds: readonly string[]; readonly sessionIds: readonly string[]; readonly at: Date },
): Promise<Stale> => {
  const { rows } = await pool.query<{
    valid: string[] | null
    refused: string[] | null
    taken: { id: string; order: string }[] | null
  }>({
    name: 'stale',
    text: `select
      (select array_agg(s.id::text) from sessions s left join devices d on d.shop_id = s.shop_id and d.id = s.device_id
        where s.shop_id = $1 and s.id = any ($2::uuid[]) and s.ended_at is null and s.expires_at > $4
          and (s.device_id is null or d.revoked_at is null)) as valid,
      (select array_agg(id::text) from refused_entries where shop_id = $1 and id = any ($3::uuid[])) as refused,
      (select json_agg(json_build_object('id', id, 'order', order_id)) from entries
        where shop_id = $1 and id = any ($3::uuid[])) as taken`,
    values: [shopId, asked.sessionIds, asked.entryIds, asked.at],
  })
  const [row] = rows
  const valid = new Set(row?.valid ?? [])
  return {
    endedSessions: new Set(asked.sessionIds.filter((id) => !valid.has(id))),
    refusedIds: new Set(row?.refused ?? []),
    takenIds: new Map((row?.taken ?? []).map(({ id, order }) => [id, order])),
  }
}
