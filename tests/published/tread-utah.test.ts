/**
 * Source: Utah Admin. Code R714-160-8, read (law.cornell.edu): reject with less than 2/32 in in two adjacent major
 * grooves at three equally spaced places, not measured on a wear bar. The rule's words on damage and pressure are not
 * checked here.
 */
import { judgeTread } from '@bayledger/reckoning/tire/judge-tread'
import { treadRules } from '@bayledger/reckoning/tire/tread-rules'
import { expect, it } from 'vitest'
import { published } from './published.ts'
import { treadOf } from './tread-readings.ts'

published({ document: 'Utah Admin. Code', section: 'R714-160-8', certainty: 'read' }, () => {
  it.each([
    ['114', 'reject'],
    ['223', 'warning'],
    ['141', 'warning'],
    ['114 114 224', 'warning'],
    ['345', 'pass'],
  ])('grooves of %s (32nds): %s', (grooves, verdict) => {
    expect(judgeTread(treadOf(grooves), treadRules.utah).verdict).toBe(verdict)
  })

  it('it is said to govern in that state only', () => {
    expect(judgeTread(treadOf('114'), treadRules.utah).says).toMatch(/R714-160-8.*in that state only/)
  })
})
