/**
 * Source: the ideal gas law again, for a tire set in a warm shop so that it reads its label's figure outside; computed by
 * hand with 14.69595 psi and 459.67. The vehicle maker's label governs.
 */
import { setTarget, usualCaps } from '@bayledger/reckoning/pressure/set-target'
import { meters } from '@bayledger/reckoning/units/measured'
import { inKelvin } from '@bayledger/reckoning/units/temperature-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'
import { shownPsi } from './shifted.ts'

const rows = [
  [32, 70, 20, 36.87],
  [35, 68, 32, 38.64],
  [33, 72, 0, 40.47],
] as const

published(
  {
    document: 'Ideal gas law at constant volume',
    section: 'setting in a warm shop',
    certainty: 'computed from definition',
  },
  () => {
    it.each(rows)(
      'a label of %d psi, %d °F in the shop, %d °F outside: %d psi',
      (label, shop, outside, psi) => {
        expect(Math.abs(shownPsi(label, outside, shop) - psi)).toBeLessThan(0.006)
      },
    )

    it.each(rows)('%d psi at %d °F with %d °F outside is set to the tenth', (label, shop, outside, psi) => {
      const set = setTarget(
        {
          placard: { value: label, unit: 'psi' },
          sidewallMaximum: null,
          outdoor: inKelvin({ value: outside, unit: 'F' }),
          tire: { kelvin: inKelvin({ value: shop, unit: 'F' }), quality: 'measured' },
          altitude: meters(0),
        },
        { ...usualCaps, overPsi: 10 },
      )
      expect(set).toMatchObject({ target: { value: Math.round(psi * 10) / 10, unit: 'psi' }, cappedBy: null })
    })
  },
)
