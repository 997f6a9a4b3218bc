/**
 * Source: industry association's Tire Information Service Bulletin, vol. 40 no. 2, read (slideshare.net/KPham): snap-in
 * valves are for 65 psi (450 kPa) at most, above that a high-pressure valve; above 130 mph (210 km/h) a clamp-in valve
 * is recommended. The vehicle maker's and the valve maker's figures govern.
 */
import {
  matchPart,
  type SensorNeed,
  type SensorPart,
  type Stem,
} from '@bayledger/reckoning/sensor/part-match'
import { kilometersPerHour } from '@bayledger/reckoning/units/measured'
import { inKilopascals } from '@bayledger/reckoning/units/pressure-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const psi = (value: number) => inKilopascals({ value, unit: 'psi' })
const kilometersPerMile = 1.609344

/** Whether only the stem decides: everything else meets the vehicle's needs. */
const refusedFor = (stem: Stem, label: number, mph: number, rated: number | null = null): string[] => {
  const need: SensorNeed = {
    frequencyMHz: 315,
    stems: ['snap-in', 'clamp-in'],
    protocol: 'P-315',
    highestCold: psi(label),
    hole: null,
    fastest: kilometersPerHour(mph * kilometersPerMile),
  }
  const part: SensorPart = {
    frequenciesMHz: [315],
    stem,
    protocols: ['P-315'],
    ratedPressure: rated === null ? null : psi(rated),
    ratedSpeed: null,
    hole: null,
    shelfMonths: null,
    madeMonth: '2026-01',
    state: { state: 'blank' },
  }
  const match = matchPart(need, part, '2026-01-12')
  return match.fits ? [] : match.refusals.map(({ aspect }) => aspect)
}

published(
  {
    document: 'Tire Information Service Bulletin',
    section: 'valves',
    edition: 'vol. 40 no. 2',
    certainty: 'read',
  },
  () => {
    it.each([32, 44, 60, 64.9, 65])('a snap-in stem may hold %d psi', (label) => {
      expect(refusedFor('snap-in', label, 100)).toEqual([])
    })

    it.each([65.1, 66, 72, 80])('a snap-in stem may not hold %d psi', (label) => {
      expect(refusedFor('snap-in', label, 100)).toEqual(['stem-pressure'])
    })

    it.each([70, 80])('a high-pressure valve may hold %d psi', (label) => {
      expect(refusedFor('snap-in', label, 100, 100)).toEqual([])
    })

    it.each([85, 112, 130])('a snap-in stem is for %d mph', (mph) => {
      expect(refusedFor('snap-in', 36, mph)).toEqual([])
    })

    it.each([131, 149, 168])('a snap-in stem is not for %d mph', (mph) => {
      expect(refusedFor('snap-in', 36, mph)).toEqual(['stem-speed'])
    })

    it.each([131, 149, 168])('a clamp-in stem is for %d mph', (mph) => {
      expect(refusedFor('clamp-in', 36, mph, 100)).toEqual([])
    })
  },
)
