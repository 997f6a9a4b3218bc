import { readFileSync } from 'node:fs'
import { FindingCode } from '@bayledger/reckoning/diagnosis/finding-codes'
import { describe, expect, it } from 'vitest'
import { diagnosisPage } from './diagnosis-page.ts'

describe('docs/diagnosis.md', () => {
  const page = readFileSync(new URL('../../../../docs/diagnosis.md', import.meta.url), 'utf8')

  it('is what the rules say today; else run npm run docs:diagnosis', () => {
    expect(page).toBe(diagnosisPage())
  })

  it('has a row for every finding', () => {
    for (const code of FindingCode.options) expect(page).toContain(` (\`${code}\`) | `)
  })
})
