/**
 * Source: 49 CFR 570.9(a), tread depth, from memory: vehicles of 10,000 lb or less, 2/32 in; indicators in any two
 * adjacent major grooves at three places spread about the tire.
 */
import { judgeTread } from '@bayledger/reckoning/tire/judge-tread'
import { treadRules } from '@bayledger/reckoning/tire/tread-rules'
import { expect, it } from 'vitest'
import { published } from './published.ts'
import { treadOf } from './tread-readings.ts'

published({ document: '49 CFR 570.9', section: '(a)', certainty: 'from memory' }, () => {
  it.each([
    ['223', 'warning'],
    ['333', 'pass'],
    ['114', 'reject'],
    ['411', 'reject'],
    ['141', 'warning'],
    ['111', 'reject'],
    ['114 114 444', 'warning'],
    ['114 411 114', 'reject'],
  ])('grooves of %s (32nds): %s', (grooves, verdict) => {
    expect(judgeTread(treadOf(grooves), treadRules.light).verdict).toBe(verdict)
  })

  it.each([
    ['223', 0],
    ['114', 6],
    ['141', 6],
  ])('grooves of %s (32nds) at three places: %i of them under 2/32', (grooves, under) => {
    expect(judgeTread(treadOf(grooves), treadRules.light).under).toHaveLength(under)
  })
})
