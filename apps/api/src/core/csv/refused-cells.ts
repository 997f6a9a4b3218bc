import type { CsvFault } from '@bayledger/contract/csv'
import type * as z from 'zod/mini'
import { registerRowWords } from '../../words/csv-words.ts'
import { wordless } from '../../words/field-words.ts'
import type { Values } from './csv-table.ts'

/** What the schema of a record says against a row, each at the column in which the field is. */
export const refusedCells = <Row extends Values>(
  schema: z.ZodMiniType,
  content: unknown,
  columnOf: Readonly<Record<string, keyof Row & string>>,
  row: Row,
): readonly CsvFault[] => {
  const read = schema.safeParse(content)
  if (read.success) return []
  return read.error.issues.map(({ path, message }) => {
    const column = columnOf[path.join('.')] ?? columnOf[String(path[0])] ?? null
    return {
      column,
      found: column === null ? '' : String(row[column] ?? ''),
      ...registerRowWords.cannotBe(message === wordless ? null : message),
    }
  })
}
