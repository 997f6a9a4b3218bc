/**
 * Sources, all read online in 2026: a school book's page on temporary spares (at most 50 mph), a motoring page (50 miles at most), and a
 * repair page (60 psi; 50 mph is 80 km/h). The spare's own sidewall governs.
 */
import { temporarySpareLimits } from '@bayledger/reckoning/tire/temporary-spare'
import { distanceIn } from '@bayledger/reckoning/units/length-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published({ document: 'Three pages on temporary spares', edition: '2026', certainty: 'read' }, () => {
  it('50 mph, which is 80 km/h, 50 miles, 60 psi', () => {
    expect(temporarySpareLimits).toEqual({ milesPerHour: 50, kilometersPerHour: 80, miles: 50, psi: 60 })
    expect(distanceIn('km', { value: temporarySpareLimits.milesPerHour, unit: 'mi' })).toBeCloseTo(80, -1)
  })
})
