import type { Pool } from 'pg'

export type DraftRow = {
  readonly draftId: string
  readonly by: string
  readonly updatedAt: Date
  readonly body: Record<string, unknown>
}

/** More than so many begun write-ups are not shown: the rest is forgotten ones. */
const mostDrafts = 30

export const listDrafts = async (pool: Pool, shopId: string): Promise<DraftRow[]> => {
  const { rows } = await pool.query<DraftRow>({
    name: 'drafts',
    text: `select d.id as "draftId", s.name as by, d.updated_at as "updatedAt", d.body
      from write_up_drafts d join staff s on s.shop_id = d.shop_id and s.id = d.staff_id
      where d.shop_id = $1 order by d.updated_at desc, d.id limit $2`,
    values: [shopId, mostDrafts],
  })
  return rows
}

export const keepDraft = async (
  pool: Pool,
  draft: { shopId: string; draftId: string; staffId: string; body: object; at: Date },
): Promise<void> => {
  await pool.query({
    name: 'keep-draft',
    text: `insert into write_up_drafts (shop_id, id, staff_id, body, updated_at)
      select $1::uuid, $2::uuid, $3::uuid, $4::json, $5::timestamptz
      where not exists (select from order_heads where shop_id = $1 and order_id = $2)
      on conflict (shop_id, id) do update set staff_id = excluded.staff_id, body = excluded.body,
        updated_at = excluded.updated_at`,
    values: [draft.shopId, draft.draftId, draft.staffId, JSON.stringify(draft.body), draft.at],
  })
}

export const deleteDraft = async (pool: Pool, shopId: string, draftId: string): Promise<void> => {
  await pool.query('delete from write_up_drafts where shop_id = $1 and id = $2', [shopId, draftId])
}
