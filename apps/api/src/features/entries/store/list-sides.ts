import type { SideKind } from '@bayledger/ledger/side-kinds'
import type { NamedSide } from '@bayledger/ledger/sides'
import type { Pool } from 'pg'
import { sideTables } from './side-tables.ts'

/** A side as it is kept; one that was erased has no row. */
export type KeptSide = NamedSide & { readonly text: string }

const select = (Object.entries(sideTables) as [SideKind, string][])
  .map(
    ([side, table]) => `select '${side}' as side, s.digest, s.text from ${table} s
      join named n on n.side = '${side}' and n.digest = s.digest where s.shop_id = $1`,
  )
  .join(' union all ')

/** What is kept of these sides, each looked for among those of its own kind; an erased one is missing. */
export const listSides = async (
  pool: Pool,
  shopId: string,
  named: readonly NamedSide[],
): Promise<KeptSide[]> => {
  if (named.length === 0) return []
  const { rows } = await pool.query<KeptSide>({
    name: 'sides',
    text: `with named as (select distinct * from unnest($2::text[], $3::text[]) as n (side, digest))
      ${select} order by side, digest`,
    values: [shopId, named.map(({ side }) => side), named.map(({ digest }) => digest)],
  })
  return rows
}
