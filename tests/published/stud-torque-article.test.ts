/**
 * Source: an article on wheel studs, read online in 2026 (speedyauto.cc/howto/autorepair/tireweartear/201603/
 * 232111.html): torque by thread, "dry installation only". For 1/2 inch it prints 75 to 80, other charts 75 to 85.
 * The vehicle maker's figure governs; these ranges only have to pass our guard.
 */
import { expect, it } from 'vitest'
import { published } from './published.ts'
import { ends, isUsual } from './stud-torque.ts'

published({ document: 'An article on wheel stud torque', edition: 'March 2016', certainty: 'read' }, () => {
  it.each(
    ends([
      ['12x1.5', 70, 80],
      ['12x1.25', 70, 80],
      ['14x1.5', 85, 90],
      ['14x1.25', 80, 90],
    ]).map(([thread, torque]) => [`M${thread}`, torque] as const),
  )('%s at %i lbf·ft is plausible', (thread, poundFeet) => {
    expect(isUsual(thread, poundFeet)).toBe(true)
  })

  it.each(
    ends([
      ['7/16-20', 70, 80],
      ['1/2-20', 75, 80],
      ['9/16-18', 135, 145],
    ]),
  )('%s at %i lbf·ft is plausible', (thread, poundFeet) => {
    expect(isUsual(thread, poundFeet)).toBe(true)
  })
})
