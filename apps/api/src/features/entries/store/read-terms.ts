import type { Pool } from 'pg'

/** What the shop has written of itself last, its warranty terms among it, and the clock of a place. */
export const readTerms = async (
  pool: Pool,
  shopId: string,
  locationId: string | null,
): Promise<{ readonly head: unknown; readonly timeZone: string }> => {
  const { rows } = await pool.query<{ head: unknown; timeZone: string | null }>({
    name: 'warranty-terms',
    text: `select
      (select body from setting_versions where shop_id = $1 and kind = 'report-head' and location_id is null
        order by version desc limit 1) as head,
      (select time_zone from locations where shop_id = $1 and id = $2) as "timeZone"`,
    values: [shopId, locationId],
  })
  return { head: rows[0]?.head ?? null, timeZone: rows[0]?.timeZone ?? 'UTC' }
}
