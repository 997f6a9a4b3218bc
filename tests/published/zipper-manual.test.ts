/**
 * Source: a tire maker's truck tire service manual, page 21 of the edition read online in 2026: steel radial light-truck
 * tires too; a tire run at less than 80 % of the normal pressure may have steel cords that are fatigued beyond what can be
 * seen; both sidewalls and the inner liner are inspected first; filled to 20 psi in a cage, then looked at again for
 * distortions and undulations and listened to for popping; where there is any, it is let down and scrapped.
 */
import { workLimits } from '@bayledger/reckoning/job-plan/work-limits'
import { workCautions } from '@bayledger/wording/en/work-cautions'
import { expect, it } from 'vitest'
import { howOf } from '../../packages/reckoning/test-support/in-words.ts'
import { find, steps } from '../../packages/reckoning/test-support/planned.ts'
import { utilitySheet } from '../../packages/reckoning/test-support/utility-sheet.ts'
import { published } from './published.ts'
import { foundOnTire } from './tire-verdicts.ts'

const truck = {
  ...utilitySheet,
  tire: { ...utilitySheet.tire, front: { ...utilitySheet.tire.front, loadClass: 'LT-E' as const } },
}
const leak = [{ kind: 'find-leak', wheel: 'LF' }] as const
const runLow = { sealant: [], runLow: ['LF'] } as const
const keys = steps(leak, truck, runLow).map(({ stepKey }) => stepKey)

const isTakenForRunLow = (gauge: number, casing: 'steel' | 'polyester'): boolean =>
  foundOnTire(
    { gauge },
    {
      placard: { front: 80, rear: 80, verified: true },
      loadClass: { front: 'LT-E', rear: 'LT-E' },
      casing: { front: casing, rear: casing },
    },
    { surroundings: { outdoor: 68, tires: 'cold', lastSet: { temperature: 68 } } },
  ).some(({ code, stop }) => code === 'run-low-damage-possible' && stop === 'do-not-drive')

published(
  {
    document: "A tire maker's truck tire service manual",
    section: 'zipper ruptures, p. 21',
    certainty: 'read',
  },
  () => {
    it.each([
      [63, 'steel', true],
      [64, 'steel', true],
      [65, 'steel', false],
      [63, 'polyester', false],
      [39, 'polyester', true],
    ] as const)('%d psi of 80 in a tire with %s cords is taken for run low: %s', (gauge, casing, taken) => {
      expect(isTakenForRunLow(gauge, casing)).toBe(taken)
    })

    it.each(['LF.tire.seat', 'LF.tire.inflate'])('the look inside comes before %s', (filling) => {
      expect(keys.indexOf('LF.tire.inside')).toBeGreaterThanOrEqual(0)
      expect(keys.indexOf('LF.tire.inside')).toBeLessThan(keys.indexOf(filling))
    })

    it('the filling stops at 20 psi, in restraint', () => {
      expect(workLimits.restraintStopPsi).toBe(20)
      expect(howOf(find('LF.tire.seat', leak, truck, runLow))).toMatch(/restraining device.*20 psi and stop/)
    })

    it.each([/look and listen/, /ripple/, /bulge/, /snap/, /let the air off/, /scrap/])(
      'what is watched for there, and what follows: %s',
      (words) => {
        expect(workCautions['CW-13'][1]).toMatch(words)
      },
    )
  },
)
