/**
 * Source: a page on valve cores (autopickles.com), read online in 2026: 2 to 5 lbf·in. The sensor maker's figure
 * governs.
 */
import { stemTorqueDoubts } from '@bayledger/reckoning/torque/plausible-torque'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published({ document: 'A page on valve core torque', edition: '2026', certainty: 'read' }, () => {
  it.each([2, 3, 5])('%i lbf·in is plausible for a valve core', (value) => {
    expect(stemTorqueDoubts('valve-core', { value, unit: 'lbf·in' })).toEqual([])
  })

  it.each([1, 6])('%i lbf·in is outside of it', (value) => {
    expect(stemTorqueDoubts('valve-core', { value, unit: 'lbf·in' })).toMatchObject([
      { code: 'outside-the-usual', meant: [] },
    ])
  })
})
