import { describe, expect, it } from 'vitest'
import { utilitySheet, verifiedSource } from '../test-support/utility-sheet.ts'
import { SpecificationSheet, unverifiedFigures } from './sheet.ts'

const taken = (sheet: unknown): boolean => SpecificationSheet.safeParse(sheet).success
const withSensor = (change: object) => ({ ...utilitySheet, sensor: { ...utilitySheet.sensor, ...change } })

describe('a specification sheet', () => {
  it('is read as it was written, whole, and nothing that it does not know', () => {
    expect(SpecificationSheet.parse(utilitySheet)).toEqual(utilitySheet)
    expect(taken({ ...utilitySheet, color: 'white' })).toBe(false)
    for (const field of Object.keys(utilitySheet))
      expect(taken({ ...utilitySheet, [field]: undefined })).toBe(false)
  })

  it.each([
    ['system', ['direct', 'indirect', 'none', 'unknown']],
    ['spare', ['none', 'temporary', 'full-size']],
  ])('has a %s of the list', (field, members) => {
    for (const member of members) expect(taken({ ...utilitySheet, [field]: member })).toBe(true)
    expect(taken({ ...utilitySheet, [field]: '' })).toBe(false)
  })

  it.each([
    ['stem', ['snap-in', 'clamp-in']],
    ['mounting', ['valve', 'band']],
    ['wokenBy', ['low-frequency-field', 'pressure-drop', 'magnet']],
  ])('requires of a sensor a %s of the list', (field, members) => {
    for (const member of members) expect(taken(withSensor({ [field]: member }))).toBe(true)
    expect(taken(withSensor({ [field]: '' }))).toBe(false)
  })

  it.each([
    [99, false],
    [100, true],
    [315, true],
    [3_000, true],
    [3_001, false],
  ])('asks for %s MHz: %s', (frequencyMHz, allowed) => {
    expect(taken(withSensor({ frequencyMHz }))).toBe(allowed)
  })

  it.each([
    [19.9, false],
    [20, true],
    [130, true],
    [130.1, false],
  ])('has a sidewall of %s psi: %s', (sidewallMaximumPsi, allowed) => {
    const front = { ...utilitySheet.tire.front, sidewallMaximumPsi }
    expect(taken({ ...utilitySheet, tire: { ...utilitySheet.tire, front } })).toBe(allowed)
  })

  it('names the figures that no second person verified, and a frequency only where there are sensors', () => {
    const open = { ...verifiedSource, verifiedBy: null }
    const { sources } = utilitySheet
    expect(unverifiedFigures(utilitySheet)).toEqual([])
    expect(
      unverifiedFigures({ ...utilitySheet, sources: { placard: open, studTorque: open, frequency: null } }),
    ).toEqual(['placard', 'studTorque', 'frequency'])
    const withoutSensors = { ...utilitySheet, sensor: null, sources: { ...sources, frequency: null } }
    expect(unverifiedFigures(withoutSensors)).toEqual([])
  })
})
