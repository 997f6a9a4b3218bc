import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { judgeSet, vehicleSets } from '@bayledger/reckoning/diagnosis/physics/confusion.test-support'
import { confusionTables, insertTables } from './vehicle-tables.ts'

/**
 * `npm run -s check:vehicles`: the confusion tables of the vehicles of which the truth is known; with `-- --write` they
 * are also written into docs/testing.md. With `-- --wrong` it prints instead, one JSON line a vehicle, those that were
 * judged wrong: the true state, what is wrong and the evidence.
 */
if (process.argv.includes('--wrong')) {
  for (const { story, evidence, score } of vehicleSets.flatMap(judgeSet)) {
    if (score.wrong.length > 0) console.log(JSON.stringify({ story, wrong: score.wrong, evidence }))
  }
} else {
  const tables = confusionTables()
  console.log(tables)
  if (process.argv.includes('--write')) {
    const file = join(import.meta.dirname, '..', '..', 'docs', 'testing.md')
    writeFileSync(file, insertTables(readFileSync(file, 'utf8'), tables))
  }
}
