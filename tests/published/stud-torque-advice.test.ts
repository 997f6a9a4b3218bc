/**
 * Source: a page of advice on wheel nuts, read online in 2026 (newswhitepaper.com/articles_mcpqga.html): torque by
 * stud, 12 mm and 14 mm each for both of their fine pitches. The vehicle maker's figure governs; these ranges only
 * have to pass our guard.
 */
import { expect, it } from 'vitest'
import { published } from './published.ts'
import { ends, isUsual } from './stud-torque.ts'

published({ document: 'A page of advice on wheel nut torque', edition: '2026', certainty: 'read' }, () => {
  it.each(
    ends([
      ['M12×1.25', 70, 80],
      ['M12×1.5', 70, 80],
      ['M14×1.25', 85, 90],
      ['M14×1.5', 85, 90],
      ['7/16-20', 70, 80],
      ['1/2-20', 75, 85],
      ['9/16-18', 135, 145],
    ]),
  )('%s at %i lbf·ft is plausible', (thread, poundFeet) => {
    expect(isUsual(thread, poundFeet)).toBe(true)
  })
})
