/**
 * Source: 49 CFR 570.62(a), tread depth, read in a copy of Part 570 (docslib.org): vehicles over 10,000 lb, 4/32 in on
 * each front tire of any vehicle other than a trailer, 2/32 in on all others; any two adjacent major grooves, at three
 * places about 120 degrees apart.
 */
import { judgeTread } from '@bayledger/reckoning/tire/judge-tread'
import { treadRules } from '@bayledger/reckoning/tire/tread-rules'
import { expect, it } from 'vitest'
import { published } from './published.ts'
import { treadOf } from './tread-readings.ts'

published({ document: '49 CFR 570.62', section: '(a)', certainty: 'read' }, () => {
  it.each([
    ['446', 'pass'],
    ['334', 'reject'],
    ['433', 'reject'],
    ['343', 'warning'],
    ['333', 'reject'],
    ['334 444 334', 'warning'],
    ['222', 'reject'],
  ])('grooves of %s (32nds) on a front tire: %s', (grooves, verdict) => {
    expect(judgeTread(treadOf(grooves), treadRules.heavyFront).verdict).toBe(verdict)
  })

  it.each([
    ['334', 'pass'],
    ['333', 'pass'],
    ['223', 'warning'],
    ['114', 'reject'],
    ['113 113 223', 'warning'],
  ])('grooves of %s (32nds) on another tire: %s', (grooves, verdict) => {
    expect(judgeTread(treadOf(grooves), treadRules.heavyOther).verdict).toBe(verdict)
  })

  it('it is said to be a model: the state’s own rule governs', () => {
    expect(judgeTread(treadOf('114'), treadRules.heavyOther).says).toMatch(/570\.62\(a\).*state.*governs/)
  })
})
