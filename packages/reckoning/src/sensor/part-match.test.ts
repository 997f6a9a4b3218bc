import { describe, expect, it } from 'vitest'
import { kilometersPerHour, millimeters } from '../units/measured.ts'
import { inKilopascals } from '../units/pressure-units.ts'
import { partAge } from './part-age.ts'
import {
  matchPart,
  type PartAspect,
  type PartRefusal,
  type SensorNeed,
  type SensorPart,
} from './part-match.ts'

const psi = (value: number) => inKilopascals({ value, unit: 'psi' })
const today = '2026-01-12'

const need: SensorNeed = {
  frequencyMHz: 433.92,
  stems: ['snap-in', 'clamp-in'],
  protocol: 'P-433',
  highestCold: psi(60),
  hole: millimeters(11.5),
  fastest: kilometersPerHour(190),
}
const part: SensorPart = {
  frequenciesMHz: [433.92],
  stem: 'snap-in',
  protocols: ['P-433'],
  ratedPressure: null,
  ratedSpeed: null,
  hole: millimeters(11.5),
  madeMonth: '2025-06',
  shelfMonths: null,
  state: { state: 'blank' },
}
const match = (needed: Partial<SensorNeed>, has: Partial<SensorPart>) =>
  matchPart({ ...need, ...needed }, { ...part, ...has }, today)
const refused = (needed: Partial<SensorNeed>, has: Partial<SensorPart>): PartAspect[] => {
  const found = match(needed, has)
  return found.fits ? [] : found.refusals.map(({ aspect }) => aspect)
}

describe('a part', () => {
  it('fits where it meets everything that the vehicle needs', () => {
    expect(match({}, {})).toEqual({ fits: true })
    expect(match({}, { frequenciesMHz: [315, 434] })).toEqual({ fits: true })
    expect(match({}, { protocols: ['P-315', 'P-433'] })).toEqual({ fits: true })
    expect(match({ hole: null, fastest: null }, { hole: null })).toEqual({ fits: true })
  })

  it.each<[Partial<SensorNeed>, Partial<SensorPart>, PartRefusal]>([
    [{}, { frequenciesMHz: [315] }, { aspect: 'frequency', foundMHz: [315], wantedMHz: 433.92 }],
    [
      {},
      { frequenciesMHz: [315, 2_400] },
      { aspect: 'frequency', foundMHz: [315, 2_400], wantedMHz: 433.92 },
    ],
    [{ stems: ['clamp-in'] }, {}, { aspect: 'stem', found: 'snap-in', wanted: ['clamp-in'] }],
    [{ highestCold: psi(72) }, {}, { aspect: 'stem-pressure', ratedPsi: 65, highestColdPsi: 72 }],
    [{}, { ratedPressure: psi(59.5) }, { aspect: 'stem-pressure', ratedPsi: 59.5, highestColdPsi: 60 }],
    [{ fastest: kilometersPerHour(240) }, {}, { aspect: 'stem-speed', ratedKmh: 210, fastestKmh: 240 }],
    [
      {},
      { stem: 'clamp-in', ratedPressure: psi(100), ratedSpeed: kilometersPerHour(180) },
      { aspect: 'stem-speed', ratedKmh: 180, fastestKmh: 190 },
    ],
    [{}, { hole: millimeters(8.8) }, { aspect: 'hole', foundMillimeters: 8.8, wantedMillimeters: 11.5 }],
    [{}, { protocols: ['P-315'] }, { aspect: 'protocol', wanted: 'P-433' }],
    [{}, { madeMonth: '2023-12' }, { aspect: 'age', age: 'past-shelf-limit' }],
    [{}, { madeMonth: '2024-12', shelfMonths: 12 }, { aspect: 'age', age: 'past-shelf-limit' }],
    [{}, { madeMonth: '2022-12' }, { aspect: 'age', age: 'quarantine' }],
    [{}, { madeMonth: '2026-02' }, { aspect: 'age', age: 'not-yet-made' }],
    [
      {},
      { state: { state: 'programmed', for: 'a Linnet 2019' } },
      { aspect: 'state', state: 'programmed', for: 'a Linnet 2019' },
    ],
    [{}, { state: { state: 'fitted' } }, { aspect: 'state', state: 'fitted' }],
    [{}, { state: { state: 'returned' } }, { aspect: 'state', state: 'returned' }],
    [{}, { state: { state: 'quarantine' } }, { aspect: 'state', state: 'quarantine' }],
    [{}, { state: { state: 'scrapped' } }, { aspect: 'state', state: 'scrapped' }],
    [
      {},
      { state: { state: 'held-back', why: 'Recalled.' } },
      { aspect: 'state', state: 'held-back', why: 'Recalled.' },
    ],
  ])('that needs %j and has %j is refused with the values of the reason', (needed, has, refusal) => {
    expect(match(needed, has)).toEqual({ fits: false, refusals: [refusal], unknown: [] })
  })

  it('is refused for every reason there is, not for the first', () => {
    expect(
      refused(
        { stems: ['clamp-in'], highestCold: psi(72), fastest: kilometersPerHour(240) },
        {
          frequenciesMHz: [315],
          hole: millimeters(8),
          protocols: [],
          madeMonth: '2020-01',
          state: { state: 'scrapped' },
        },
      ),
    ).toEqual(['frequency', 'stem', 'stem-pressure', 'stem-speed', 'hole', 'protocol', 'age', 'state'])
  })

  it('holds at its very limits', () => {
    expect(refused({ highestCold: psi(65) }, {})).toEqual([])
    expect(refused({ highestCold: psi(65.1) }, {})).toEqual(['stem-pressure'])
    expect(refused({ fastest: kilometersPerHour(210) }, {})).toEqual([])
    expect(refused({ fastest: kilometersPerHour(210.5) }, {})).toEqual(['stem-speed'])
    expect(refused({ highestCold: psi(72) }, { ratedPressure: psi(72) })).toEqual([])
    expect(refused({}, { hole: millimeters(11.54) })).toEqual([])
    expect(refused({}, { hole: millimeters(11.56) })).toEqual(['hole'])
  })

  it('may hold more than others of its kind where its maker says so', () => {
    expect(refused({ highestCold: psi(72) }, { ratedPressure: psi(100) })).toEqual([])
    expect(refused({ fastest: kilometersPerHour(240) }, { ratedSpeed: kilometersPerHour(250) })).toEqual([])
  })

  it.each([
    ['frequency', { frequenciesMHz: null }],
    ['frequency', { frequenciesMHz: [] }],
    ['protocol', { protocols: null }],
    ['hole', { hole: null }],
    ['age', { madeMonth: null }],
    ['state', { state: null }],
    ['stem-pressure', { stem: 'clamp-in' }],
  ] as const)('of which the %s is not known neither fits nor is refused', (aspect, has) => {
    expect(match({}, has as Partial<SensorPart>)).toEqual({ fits: false, refusals: [], unknown: [aspect] })
  })

  it('whose stem is unknown is unknown in everything that a stem decides', () => {
    expect(match({}, { stem: null })).toMatchObject({ unknown: ['stem', 'stem-pressure', 'stem-speed'] })
    expect(match({ fastest: null }, { stem: null })).toMatchObject({ unknown: ['stem', 'stem-pressure'] })
  })

  it('with a metal stem is not limited in speed', () => {
    expect(
      refused({ fastest: kilometersPerHour(300) }, { stem: 'clamp-in', ratedPressure: psi(100) }),
    ).toEqual([])
  })
})

describe('the age of a part', () => {
  it.each([
    ['2026-01', 'fresh'],
    ['2024-01', 'fresh'],
    ['2023-12', 'past-shelf-limit'],
    ['2023-01', 'past-shelf-limit'],
    ['2022-12', 'quarantine'],
    ['2026-02', 'not-yet-made'],
    ['2025-12', 'fresh'],
  ] as const)('made in %s is %s in January 2026', (madeMonth, age) => {
    expect(partAge(madeMonth, today)).toBe(age)
  })
})
