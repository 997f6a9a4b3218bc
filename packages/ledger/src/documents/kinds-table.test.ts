import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { withKindsTable } from './kinds-table.ts'

it('docs/ledger.md lists every kind as the registry has it; `npm run docs:ledger` renews it', () => {
  const document = readFileSync(`${import.meta.dirname}/../../../../docs/ledger.md`, 'utf8')
  expect(withKindsTable(document)).toBe(document)
})

it('a document without its marks is refused in words', () => {
  expect(() => withKindsTable('# The ledger')).toThrow(/lost its marks/)
})
