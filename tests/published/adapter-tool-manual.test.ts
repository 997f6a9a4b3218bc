/**
 * Source: a torque wrench's manual, read online in 2026 (easymanua.ls): 16 in with 2 in, 50 wanted, 44.44 on the
 * scale.
 */
import { expect, it } from 'vitest'
import { inches, readingFor, torqueAt } from './adapter-lengths.ts'
import { published } from './published.ts'

published({ document: "A torque wrench's manual", section: 'extensions', certainty: 'read' }, () => {
  it('50 is applied at 44.44 on the scale', () => {
    expect(readingFor(50, inches(16, 2))).toBeCloseTo(44.44, 2)
  })

  it('44.44 on the scale applies 50', () => {
    expect(torqueAt(44.44, inches(16, 2))).toBeCloseTo(50, 1)
  })
})
