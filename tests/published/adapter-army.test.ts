/**
 * Source: US Army TM 9-254, torque wrench with an extension, read online in 2026 (firetrucksandequipment.tpub.com/
 * TM-9-254, p. 91): a wrench of 12 in with an extension of 2 in that shows 60 lbf·in applies 70.
 */
import { expect, it } from 'vitest'
import { inches, readingFor, torqueAt } from './adapter-lengths.ts'
import { published } from './published.ts'

published({ document: 'US Army TM 9-254', section: 'p. 91', certainty: 'read' }, () => {
  it('60 on the scale applies 70', () => {
    expect(torqueAt(60, inches(12, 2))).toBeCloseTo(70, 9)
  })

  it('70 is applied at 60 on the scale', () => {
    expect(readingFor(70, inches(12, 2))).toBeCloseTo(60, 9)
  })
})
