/**
 * Preload of wheel studs, worked by hand from T = K · D · F with K 0.20 dry and 0.15 oiled, the areas of ISO 898-1
 * and a proof stress of 830 MPa for class 10.9. They explain why threads stay dry; the vehicle maker's torque governs.
 */
import { clampForce, proofShare, proofStress, studStress } from '@bayledger/reckoning/torque/clamp-force'
import { readThread } from '@bayledger/reckoning/torque/read-thread'
import { stressArea, threadDiameter } from '@bayledger/reckoning/torque/thread'
import { inNewtonMeters } from '@bayledger/reckoning/units/torque-units'
import { describe, expect, it } from 'vitest'
import { published } from './published.ts'

const preloadOf = (poundFeet: number, text: string, surface: 'dry' | 'lubricated') => {
  const thread = readThread(text)
  if (!thread.ok) throw new Error(thread.do)
  const diameter = threadDiameter(thread.value)
  const force = clampForce(inNewtonMeters({ value: poundFeet, unit: 'lbf·ft' }), diameter, surface).nominal
  const stress = studStress(force, stressArea(thread.value))
  return { force, stress, share: proofShare(stress, proofStress('10.9', diameter)) }
}

published(
  { document: 'Preload of wheel studs', section: 'T = K · D · F', certainty: 'computed from definition' },
  () => {
    describe.each([
      [80, 'M12×1.5', 'dry', 45.19, 512.8, 61.8],
      [80, 'M12×1.25', 'dry', 45.19, 490.9, 59.1],
      [80, 'M12×1.5', 'lubricated', 60.26, 683.8, 82.4],
      [100, 'M12×1.5', 'dry', 56.49, 641.0, 77.2],
      [100, 'M14×1.5', 'dry', 48.42, 388.8, 46.8],
      [140, 'M14×1.5', 'dry', 67.79, 544.3, 65.6],
    ] as const)('%i lbf·ft on %s, %s', (poundFeet, thread, surface, kilonewtons, stress, percent) => {
      const preload = preloadOf(poundFeet, thread, surface)

      it(`clamps with ${kilonewtons} kN`, () => {
        expect(preload.force / 1_000).toBeCloseTo(kilonewtons, 2)
      })

      it(`pulls the stud with ${stress} MPa`, () => {
        expect(preload.stress).toBeCloseTo(stress, 1)
      })

      it(`is ${percent} % of what class 10.9 is proved to`, () => {
        expect(preload.share * 100).toBeCloseTo(percent, 1)
      })
    })

    it('100 lbf·ft on a dry M12×1.5 clamps with about 12,700 lbf', () => {
      expect(preloadOf(100, 'M12×1.5', 'dry').force / 4.4482216152605).toBeCloseTo(12_700, -2)
    })

    it('100 lbf·ft on an oiled M12×1.5 goes over the proof stress: 103 %', () => {
      expect(preloadOf(100, 'M12×1.5', 'lubricated').share * 100).toBeCloseTo(103, 0)
    })
  },
)
