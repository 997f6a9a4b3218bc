/**
 * Source: a page on wheel nuts in metric countries, read online in 2026 (ta3alm.org): again after 50 to 100 km (30 to
 * 60 miles). It disagrees with the 50 to 100 miles of others, so the distance is a setting and called advice. Taken
 * as a maker's distance in miles, it comes out in an odometer's kilometers.
 */
import { retorqueWindow } from '@bayledger/reckoning/torque/retorque'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const window = retorqueWindow({ value: 10_000, unit: 'km' }, { from: 30, to: 60 })

published(
  { document: 'A page on wheel nuts', section: 'torquing again, km', edition: '2026', certainty: 'read' },
  () => {
    it('30 miles are about 50 km', () => {
      expect(Math.round((window.from.value - 10_000) / 10) * 10).toBe(50)
    })

    it('60 miles are about 100 km', () => {
      expect(Math.round((window.to.value - 10_000) / 10) * 10).toBe(100)
    })

    it('the window is in the unit of the odometer', () => {
      expect(window.to.unit).toBe('km')
    })
  },
)
