import { withClient } from '@bayledger/db/with-client'

/** Every way in which a database may hold these words: as they are, in its search, and inside bytes. */
const formsOf = (mark: string): string[] => {
  const small = mark.toLowerCase()
  const digits = mark.replace(/\D/g, '')
  const sign = mark
    .toUpperCase()
    .replace(/[^A-Z0-9]/g, '')
    .replaceAll('O', '0')
    .replaceAll('I', '1')
  const forms = [
    small,
    sign.toLowerCase(),
    ...(digits.length > 6 ? [digits, [...digits].reverse().join('')] : []),
  ]
  return [...new Set(forms)]
}

/** The columns of a whole database in which one of these marks is found, as `table.column`. */
export const findMarks = (ownerUrl: string, marks: readonly string[]): Promise<string[]> =>
  withClient(ownerUrl, async (owner) => {
    const { rows } = await owner.query<{ table: string; column: string; type: string }>(
      `select c.relname as table, a.attname as column, format_type(a.atttypid, null) as type
        from pg_attribute a join pg_class c on c.oid = a.attrelid
        where c.relnamespace = 'public'::regnamespace and c.relkind in ('r', 'p') and a.attnum > 0 and not a.attisdropped
        order by 1, 2`,
    )
    const forms = marks.flatMap(formsOf)
    const found: string[] = []
    for (const { table, column, type } of rows) {
      const holds =
        type === 'bytea'
          ? `position(convert_to(form, 'UTF8') in "${column}") > 0`
          : `strpos(lower("${column}"::text), form) > 0`
      const hit = await owner.query(
        `select from "${table}" where exists (select from unnest($1::text[]) as form where ${holds}) limit 1`,
        [forms],
      )
      if (hit.rows.length > 0) found.push(`${table}.${column}`)
    }
    return found
  })
