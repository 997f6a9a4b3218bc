import type { Pool } from 'pg'

/** The time-stamp that is kept beside a report; `null` where there is none, or it lies in the file. */
export const findStampBeside = async (
  pool: Pool,
  shopId: string,
  number: string,
): Promise<Uint8Array | null> => {
  const { rows } = await pool.query<{ token: Buffer | null }>({
    name: 'stamp-beside-report',
    text: 'select token from report_stamps where shop_id = $1 and number = $2',
    values: [shopId, number],
  })
  return rows[0]?.token ?? null
}
