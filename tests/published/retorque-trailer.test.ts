/**
 * Source: a trailer maker's page, read online in 2026: torque again at 10, 25 and 50 miles. A vehicle maker's own
 * distance goes before the usual one.
 */
import { retorqueWindow } from '@bayledger/reckoning/torque/retorque'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published(
  { document: "A trailer maker's page", section: 'torquing again', edition: '2026', certainty: 'read' },
  () => {
    it.each([10, 25, 50])('a check at %i miles is due there', (miles) => {
      expect(retorqueWindow({ value: 1_200, unit: 'mi' }, { from: miles, to: 50 }).from.value).toBe(
        1_200 + miles,
      )
    })
  },
)
