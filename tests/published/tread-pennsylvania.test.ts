/**
 * Source: 67 Pa. Code 175.80(e)(1), quoted in course notes of 2026: reject where two adjacent treads have less than 2/32
 * in at any point.
 */
import { judgeTread } from '@bayledger/reckoning/tire/judge-tread'
import { treadRules } from '@bayledger/reckoning/tire/tread-rules'
import { expect, it } from 'vitest'
import { published } from './published.ts'
import { treadOf } from './tread-readings.ts'

published({ document: '67 Pa. Code', section: '175.80(e)(1)', certainty: 'quoted' }, () => {
  it.each([
    ['444 114 444', 'reject'],
    ['114 444 444', 'reject'],
    ['444 444 411', 'reject'],
    ['141 444 444', 'warning'],
    ['224 224 224', 'warning'],
    ['555', 'pass'],
  ])('grooves of %s (32nds): %s', (grooves, verdict) => {
    expect(judgeTread(treadOf(grooves), treadRules.pennsylvania).verdict).toBe(verdict)
  })
})
