import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { findingsSaid } from './findings-said.ts'

/**
 * Replaces diagnosis/cases/rule-set-pin.test.ts while the diagnosis is mutated: that test holds the same words
 * and what to check next, but takes too long to run again for each mutant. The run writes down what the unchanged code
 * says before it begins.
 */
it('what is found in each worked case is word for word what the unchanged code says', () => {
  const file = process.env.MUTATION_SAID
  if (file === undefined) throw new Error('run it by npm run mutate')
  expect(findingsSaid()).toEqual(JSON.parse(readFileSync(file, 'utf8')))
})
