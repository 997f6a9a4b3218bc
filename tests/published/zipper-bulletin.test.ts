/**
 * Source: the tire manufacturers' association's bulletin on sidewall zipper ruptures, as a trade journal quoted it on
 * January 31, 2025 (read online in 2026): truck and bus tires and LT tires of steel-cord radial construction; the core
 * comes out, the tire is let down wholly, the wheel comes off, the tire comes off the wheel, and is looked at and felt;
 * one looks for distortions, ripples and bulges and listens for snapping, popping and cracking. The restraint and the
 * remote valve are from memory.
 */
import { careOf } from '@bayledger/reckoning/job-plan/tire-dangers'
import { workCautions } from '@bayledger/wording/en/work-cautions'
import { expect, it } from 'vitest'
import { howOf } from '../../packages/reckoning/test-support/in-words.ts'
import { find, steps } from '../../packages/reckoning/test-support/planned.ts'
import { utilitySheet } from '../../packages/reckoning/test-support/utility-sheet.ts'
import { published } from './published.ts'

const leak = [{ kind: 'find-leak', wheel: 'LF' }] as const
const runLow = { sealant: [], runLow: ['LF'] } as const
const sheetOf = (loadClass: 'SL' | 'XL' | 'LT-C' | 'LT-D' | 'LT-E') => ({
  ...utilitySheet,
  tire: { ...utilitySheet.tire, front: { ...utilitySheet.tire.front, loadClass } },
})
const keys = steps(leak, sheetOf('LT-E'), runLow).map(({ stepKey }) => stepKey)

published(
  {
    document: "The tire manufacturers' bulletin on zipper ruptures, in a trade journal",
    edition: '2025-01-31',
    certainty: 'quoted',
  },
  () => {
    it.each([
      ['LT-C', true],
      ['LT-D', true],
      ['LT-E', true],
      ['SL', false],
      ['XL', false],
    ] as const)('a run-low tire of class %s is filled in restraint: %s', (loadClass, restrained) => {
      expect(careOf(sheetOf(loadClass), runLow, 'LF').restrained).toBe(restrained)
    })

    it.each([
      ['wheel.off', 'tire.open'],
      ['tire.open', 'tire.inside'],
      ['tire.inside', 'leak.find'],
    ])('%s comes before %s', (first, then) => {
      expect(keys.indexOf(`LF.${first}`)).toBeGreaterThanOrEqual(0)
      expect(keys.indexOf(`LF.${first}`)).toBeLessThan(keys.indexOf(`LF.${then}`))
    })

    it('the core comes out and all air is off before the bead is broken', () => {
      expect(howOf(find('LF.tire.open', leak, sheetOf('LT-E'), runLow))).toMatch(
        /core out first.*until no air comes/i,
      )
    })

    it.each(['LF.tire.seat', 'LF.tire.inflate'])(
      '%s is done in a restraining device, by a remote valve',
      (key) => {
        expect(howOf(find(key, leak, sheetOf('LT-E'), runLow))).toMatch(/restraining device.*remote valve/)
      },
    )

    it.each([/snapping/, /bulge/, /ripple/, /nobody in the line of a sidewall/])(
      'the caution says %s',
      (words) => {
        expect(workCautions['CW-13'][1]).toMatch(words)
      },
    )
  },
)
