import { describe, expect, it } from 'vitest'
import type { SpecificationSheet } from '../sheet.ts'
import { pressureIn } from '../units/pressure-units.ts'
import { sensorNeed } from './sensor-need.ts'

const sensor = { frequencyMHz: 433.92, protocol: 'P-433', stem: 'clamp-in' }
const sheet = (placard: object, change: object = {}): SpecificationSheet =>
  ({
    sensor,
    placard: { front: { psi: 36 }, rear: { psi: 42 }, spare: null, ...placard },
    ...change,
  }) as SpecificationSheet
const highestPsi = (of: SpecificationSheet) => {
  const need = sensorNeed(of)
  return need && pressureIn('psi', { value: need.highestCold ?? 0, unit: 'kPa' })
}

describe('what a sheet requires of a sensor', () => {
  it('is its frequency, stem and protocol; a hole and a speed are not on it', () => {
    expect(sensorNeed(sheet({}))).toMatchObject({
      frequencyMHz: 433.92,
      stems: ['clamp-in'],
      protocol: 'P-433',
      hole: null,
      fastest: null,
    })
  })

  it('is a stem for the highest figure of the label, at any wheel', () => {
    expect(highestPsi(sheet({}))).toBeCloseTo(42, 9)
    expect(highestPsi(sheet({ front: { psi: 50 } }))).toBeCloseTo(50, 9)
    expect(highestPsi(sheet({ spare: { psi: 60 } }))).toBeCloseTo(60, 9)
  })

  it('is nothing where the vehicle has no sensors', () => {
    expect(sensorNeed(sheet({}, { sensor: null }))).toBeNull()
  })
})
