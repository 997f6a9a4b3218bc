import type { Pool } from 'pg'

/** Which of these digests have their words stored. */
export const listStoredDigests = async (
  pool: Pool,
  shopId: string,
  digests: readonly string[],
): Promise<ReadonlySet<string>> => {
  if (digests.length === 0) return new Set()
  const { rows } = await pool.query<{ digest: string }>({
    name: 'stored-digests',
    text: 'select digest from personal_texts where shop_id = $1 and digest = any ($2::text[])',
    values: [shopId, digests],
  })
  return new Set(rows.map(({ digest }) => digest))
}

/** The words behind these digests; an erased one is missing. */
export const listTexts = async (
  pool: Pool,
  shopId: string,
  digests: readonly string[],
): Promise<{ digest: string; text: string }[]> => {
  if (digests.length === 0) return []
  const { rows } = await pool.query<{ digest: string; text: string }>({
    name: 'texts',
    text: 'select digest, text from personal_texts where shop_id = $1 and digest = any ($2::text[]) order by digest',
    values: [shopId, digests],
  })
  return rows
}
