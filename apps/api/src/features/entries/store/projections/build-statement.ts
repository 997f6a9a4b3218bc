import { allProjections } from './all-projections.ts'
import { type HeadRow, headColumns } from './head.ts'
import type { OrderWrite, Projection } from './projection.ts'

export type Statement = { readonly name: string; readonly text: string; readonly values: readonly string[] }

/** How a statement treats the heads: `sql` gives `head`, the orders that moved, from the rows in `asked`. */
export type HeadPart = {
  readonly name: string
  readonly rebuilding: boolean
  readonly columns: Readonly<Record<string, string>>
  readonly sql: string
}

/**
 * One statement that writes heads and everything that follows from them. It holds only the projections that have
 * rows, so that a kind pays for nothing but its own; each takes its rows as one JSON list with named members. Gives
 * back the orders whose head moved; of every other order nothing was written.
 */
export const buildStatement = <Row extends HeadRow>(
  head: HeadPart,
  heads: readonly Row[],
  writes: readonly OrderWrite[],
  projections: readonly Projection[] = allProjections,
): Statement => {
  const filled = projections.flatMap((part) => {
    const rows = writes.flatMap((write) =>
      part.rowsOf(write).map((row) => ({ shop_id: write.shopId, order_id: write.orderId, ...row })),
    )
    return rows.length > 0 ? [{ part, rows }] : []
  })
  return {
    name: shortName([head.name, ...filled.map(({ part }) => part.name)]),
    text: textOf(
      head,
      filled.map(({ part }) => part),
    ),
    values: [JSON.stringify(heads), ...filled.map(({ rows }) => JSON.stringify(rows))],
  }
}

/**
 * PostgreSQL cuts the name of a prepared statement after 63 bytes, and two statements of one name would be taken for each
 * other: where the parts have no room, each is named by its first four letters.
 */
const shortName = (parts: readonly string[]): string => {
  const whole = parts.join(' ')
  return whole.length <= 63 ? whole : parts.map((part) => part.slice(0, 4)).join('.')
}

const texts = new Map<string, string>()

const textOf = (head: HeadPart, parts: readonly Projection[]): string => {
  const name = [head.name, ...parts.map((part) => part.name)].join(' ')
  const known = texts.get(name)
  if (known !== undefined) return known
  const tables = parts.map(({ name, columns, sql }, index) => {
    const rows = `${name}_rows`
    const named = { shop_id: 'uuid', order_id: 'uuid', ...columns }
    return `${rows} as (select r.* from json_to_recordset($${index + 2}::json) as r (${listed(named)})
      join head using (shop_id, order_id)), ${sql(rows, head.rebuilding)}`
  })
  const asked = `asked as (select * from json_to_recordset($1::json) as r (${listed({ ...headColumns, ...head.columns })}))`
  const text = `with ${[asked, head.sql, ...tables].join(', ')} select shop_id, order_id from head`
  texts.set(name, text)
  return text
}

const listed = (columns: Readonly<Record<string, string>>): string =>
  Object.entries(columns)
    .map(([name, type]) => `${name} ${type}`)
    .join(', ')
