import { expect, it } from 'vitest'
import { gaveWords } from './who-decides.ts'

it('says who gave a consent by name, and as what where it was not the owner', () => {
  expect(gaveWords('owner', 'A. Driver')).toBe('A. Driver')
  expect(gaveWords('named-person', 'B. Driver')).toBe('B. Driver, whom the owner named')
  expect(gaveWords('fleet-contact', 'C. Driver')).toBe('C. Driver, a fleet contact')
})
