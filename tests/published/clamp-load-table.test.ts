/**
 * Source: a hardware maker's torque table (T = K · D · F) for SAE grade 2, fine threads, K 0.2, clamp load at 75 % of
 * a proof stress of 55,000 psi, read online in 2026 (coxhardware.com/t-bolt-torque.aspx). The table gives lbf and
 * lbf·ft; the pound-force and the inch are exact by definition. It is not about wheels, and no torque is taken from
 * it.
 */
import { clampForce } from '@bayledger/reckoning/torque/clamp-force'
import { readThread } from '@bayledger/reckoning/torque/read-thread'
import { stressArea, threadDiameter } from '@bayledger/reckoning/torque/thread'
import { newtonMeters } from '@bayledger/reckoning/units/measured'
import { inNewtonMeters } from '@bayledger/reckoning/units/torque-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const newtonsPerPoundForce = 4.4482216152605
const squareMillimetersPerSquareInch = 25.4 ** 2

const rows = [
  ['7/16-20', 4_896, 35.7],
  ['1/2-20', 6_600, 55],
  ['9/16-18', 8_374, 78.5],
  ['5/8-18', 10_560, 110],
] as const

const threadOf = (text: string) => {
  const read = readThread(text)
  if (!read.ok) throw new Error(read.do)
  return read.value
}

published(
  {
    document: "A hardware maker's torque table",
    section: 'SAE grade 2, fine',
    edition: '2026',
    certainty: 'read',
  },
  () => {
    it.each(rows)('%s clamps with %i lbf', (text, poundsForce, poundFeet) => {
      const torque = inNewtonMeters({ value: poundFeet, unit: 'lbf·ft' })
      const clamp = clampForce(torque, threadDiameter(threadOf(text)), 'dry').nominal / newtonsPerPoundForce
      expect(Math.abs(clamp - poundsForce)).toBeLessThan(poundsForce * 3e-4)
    })

    it.each(rows)('%s clamps with %i lbf at %d lbf·ft', (text, poundsForce, poundFeet) => {
      const forceOfOne = clampForce(newtonMeters(1), threadDiameter(threadOf(text)), 'dry').nominal
      const torque = newtonMeters((poundsForce * newtonsPerPoundForce) / forceOfOne)
      expect(torque / inNewtonMeters({ value: 1, unit: 'lbf·ft' })).toBeCloseTo(poundFeet, 1)
    })

    it.each(rows)('%s has an area that carries %i lbf at 75 %% of its proof stress', (text, poundsForce) => {
      const area = stressArea(threadOf(text)) / squareMillimetersPerSquareInch
      expect(Math.abs(0.75 * 55_000 * area - poundsForce)).toBeLessThan(poundsForce * 1e-3)
    })
  },
)
