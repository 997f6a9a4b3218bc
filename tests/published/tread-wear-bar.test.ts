/**
 * Source: 49 CFR 571.139 S5.4, quoted in course notes of 2026: tread wear indicators stand at 1/16 in. In mm by the inch
 * of 25.4 mm.
 */
import { thresholds } from '@bayledger/reckoning/diagnosis/thresholds'
import { wearBar } from '@bayledger/reckoning/tire/tread-limits'
import { inMillimeters, lengthIn } from '@bayledger/reckoning/units/length-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published({ document: '49 CFR 571.139', section: 'S5.4', certainty: 'quoted' }, () => {
  it('the wear bar is 1/16 in high', () => {
    expect(lengthIn('in', wearBar)).toBe(1 / 16)
  })

  it('which is 1.5875 mm', () => {
    expect(inMillimeters(wearBar)).toBeCloseTo(1.5875, 12)
  })

  it('and the depth at which the diagnosis calls a tire worn out', () => {
    expect(lengthIn('in', { value: thresholds.wornOut32nds, unit: '1/32 in' })).toBe(1 / 16)
  })
})
