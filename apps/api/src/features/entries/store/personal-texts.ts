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

export const listTexts = async (
  pool: Pool,
  shopId: string,
  orderId: string,
): Promise<{ digest: string; text: string }[]> => {
  const { rows } = await pool.query<{ digest: string; text: string }>({
    name: 'texts-of-order',
    text: 'select digest, text from personal_texts where shop_id = $1 and order_id = $2 order by digest',
    values: [shopId, orderId],
  })
  return rows
}
