import { readFileSync } from 'node:fs'
import { contract } from '@bayledger/contract/contract'
import { kindNames } from '@bayledger/ledger/registry'
import { describe, expect, it } from 'vitest'
import { accessPage } from './access-page.ts'

describe('docs/access.md', () => {
  const page = readFileSync(new URL('../../../../docs/access.md', import.meta.url), 'utf8')

  it('is what the registry and the contract say today; else run npm run docs:access', () => {
    expect(page).toBe(accessPage())
  })

  it('has a row for every kind of entry and every route', () => {
    for (const kind of kindNames) expect(page).toContain(`| \`${kind}\` | `)
    for (const { method, path } of contract) expect(page).toContain(`| \`${method} ${path}\` | `)
  })
})
