import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { confusionTables, insertTables } from './vehicle-tables.ts'

/**
 * `npm run -s check:vehicles`: the confusion tables of the vehicles of which the truth is known; with `-- --write` they
 * are also written into docs/testing.md.
 */
const tables = confusionTables()
console.log(tables)
if (process.argv.includes('--write')) {
  const file = join(import.meta.dirname, '..', '..', 'docs', 'testing.md')
  writeFileSync(file, insertTables(readFileSync(file, 'utf8'), tables))
}
