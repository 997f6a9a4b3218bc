/**
 * Source: a trailer's manual, p. 40, read online in 2026 (manualsdir.com 569014): three passes of 20 to 25, 50 to 60
 * and 90 to 120 lbf·ft. Its middle pass is 50 to 56 % of its last; ours is lifted to the next 5 over the half. Its
 * first pass is our snug by hand, its last is our full round, which we make twice.
 */

import { roundTorque } from '@bayledger/reckoning/torque/rounds'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published({ document: "A trailer's manual", section: 'p. 40', certainty: 'read' }, () => {
  it.each([100, 110, 120])('for %i lbf·ft the middle pass is at 50 to 60', (value) => {
    const half = roundTorque('half', { value, unit: 'lbf·ft' }).value
    expect(half).toBeGreaterThanOrEqual(50)
    expect(half).toBeLessThanOrEqual(60)
  })

  it.each([90, 100, 110, 120])('for %i lbf·ft the last pass is at the figure itself', (value) => {
    expect(roundTorque('full', { value, unit: 'lbf·ft' }).value).toBe(value)
  })
})
