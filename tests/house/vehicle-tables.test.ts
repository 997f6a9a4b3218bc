import { expect, it } from 'vitest'
import { confusionTables, insertTables } from '../cases/vehicle-tables.ts'
import { textOf } from './repository-files.ts'

it('the confusion tables in docs/testing.md are those of today (npm run check:vehicles -- --write)', () => {
  const page = textOf('docs/testing.md')
  expect(page).toBe(insertTables(page, confusionTables()))
})
