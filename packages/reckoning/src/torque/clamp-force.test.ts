import { describe, expect, it } from 'vitest'
import { megapascals, millimeters, newtonMeters, newtons, squareMillimeters } from '../units/measured.ts'
import { clampForceCaution } from '../words/clamp-force.ts'
import { clampForce, proofShare, proofStress, studStress } from './clamp-force.ts'

describe('the clamp force of a torque', () => {
  it('is a range of 30 % each way, dry', () => {
    const force = clampForce(newtonMeters(120), millimeters(12), 'dry')
    expect(force.nominal).toBeCloseTo(50_000, 6)
    expect(force.low).toBeCloseTo(35_000, 6)
    expect(force.high).toBeCloseTo(65_000, 6)
  })

  it('is a third more on a lubricated thread', () => {
    const dry = clampForce(newtonMeters(120), millimeters(12), 'dry').nominal
    expect(clampForce(newtonMeters(120), millimeters(12), 'lubricated').nominal / dry).toBeCloseTo(4 / 3, 9)
  })

  it('makes a stress over the area, and a share of the proof stress', () => {
    expect(studStress(newtons(50_000), squareMillimeters(80))).toBe(625)
    expect(proofShare(megapascals(415), megapascals(830))).toBe(0.5)
  })

  it.each([
    ['8.8', 12, 580],
    ['8.8', 16, 580],
    ['8.8', 16.1, 600],
    ['10.9', 20, 830],
    ['12.9', 20, 970],
  ] as const)('class %s at %d mm has a proof stress of %i MPa', (propertyClass, diameter, stress) => {
    expect(proofStress(propertyClass, millimeters(diameter))).toBe(stress)
  })

  it('is said to be no source, with whose figure governs', () => {
    expect(clampForceCaution).toMatch(/not a source.*30 %.*vehicle maker's figure governs/)
  })
})
