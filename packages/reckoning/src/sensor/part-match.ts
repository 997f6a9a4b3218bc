import { above } from '../pressure/threshold.ts'
import {
  type GaugeKilopascals,
  type KilometersPerHour,
  kilometersPerHour,
  type Millimeters,
} from '../units/measured.ts'
import { inKilopascals, pressureIn } from '../units/pressure-units.ts'
import { isSameFrequency } from './frequency.ts'
import { type PartAge, partAge } from './part-age.ts'

export type Stem = 'snap-in' | 'clamp-in'

/** What a vehicle needs from a sensor; null where the vehicle's sheet does not say, so that it is not checked. */
export type SensorNeed = {
  readonly frequencyMHz: number
  readonly stems: readonly Stem[]
  readonly protocol: string
  /** The highest figure of the door label, cold: the vehicle maker's. */
  readonly highestCold: GaugeKilopascals | null
  readonly hole: Millimeters | null
  readonly fastest: KilometersPerHour | null
}

export type PartState =
  | { readonly state: 'blank' | 'fitted' | 'returned' | 'quarantine' | 'scrapped' }
  | { readonly state: 'programmed'; readonly for: string }
  /** Held back from fitting by the shop's own register, with its words. */
  | { readonly state: 'held-back'; readonly why: string }

/** A part in hand; null where unknown. A dual part has two frequencies. */
export type SensorPart = {
  readonly frequenciesMHz: readonly number[] | null
  readonly stem: Stem | null
  readonly protocols: readonly string[] | null
  readonly ratedPressure: GaugeKilopascals | null
  readonly ratedSpeed: KilometersPerHour | null
  readonly hole: Millimeters | null
  /** Year and month, as 2025-08. */
  readonly madeMonth: string | null
  /** The shop's own shelf limit, where it is shorter than the usual one. */
  readonly shelfMonths: number | null
  readonly state: PartState | null
}

export type PartAspect =
  | 'frequency'
  | 'stem'
  | 'stem-pressure'
  | 'stem-speed'
  | 'hole'
  | 'protocol'
  | 'age'
  | 'state'

/** What speaks against a part: the aspect, what the part has and what the vehicle needs. Pressures in psi. */
export type PartRefusal =
  | { readonly aspect: 'frequency'; readonly foundMHz: readonly number[]; readonly wantedMHz: number }
  | { readonly aspect: 'stem'; readonly found: Stem; readonly wanted: readonly Stem[] }
  | { readonly aspect: 'stem-pressure'; readonly ratedPsi: number; readonly highestColdPsi: number }
  | { readonly aspect: 'stem-speed'; readonly ratedKmh: number; readonly fastestKmh: number }
  | { readonly aspect: 'hole'; readonly foundMillimeters: number; readonly wantedMillimeters: number }
  | { readonly aspect: 'protocol'; readonly wanted: string }
  | { readonly aspect: 'age'; readonly age: Exclude<PartAge, 'fresh'> }
  | {
      readonly aspect: 'state'
      readonly state: Exclude<PartState['state'], 'blank' | 'programmed' | 'held-back'>
    }
  | { readonly aspect: 'state'; readonly state: 'programmed'; readonly for: string }
  | { readonly aspect: 'state'; readonly state: 'held-back'; readonly why: string }

/** A part fits, or there is a reason: a refusal, or a need of the vehicle that is unknown of the part. */
export type PartMatch =
  | { readonly fits: true }
  | {
      readonly fits: false
      readonly refusals: readonly PartRefusal[]
      readonly unknown: readonly PartAspect[]
    }

/**
 * Whether a part may be fitted to a vehicle. Every reason against it is named; a part that is nearly right, or of which
 * something required is not known, does not fit. `onDay` is the day of fitting, as 2026-01-12. The vehicle maker's and the
 * sensor maker's figures govern; they are in `need` and `part`.
 *
 * @units kPa gauge, cold; km/h; mm; MHz
 * @limits A snap-in stem that states no rating holds 65 psi and 210 km/h (130 mph) at most. A sensor is fitted up to 24
 * calendar months after the one it was made in, or up to the shop's own shorter limit; after 36 it goes into quarantine.
 * @source Snap-in valves: industry association's Tire Information Service Bulletin, vol. 40 no. 2 (read). Shelf limits:
 * this program's own rule.
 */
export const matchPart = (need: SensorNeed, part: SensorPart, onDay: string): PartMatch => {
  const found = aspects.map(([aspect, judge]) => ({ aspect, judged: judge(need, part, onDay) }))
  const refusals = found.flatMap(({ judged }) => (judged === null || judged === true ? [] : [judged]))
  const unknown = found.flatMap(({ aspect, judged }) => (judged === null ? [aspect] : []))
  return refusals.length === 0 && unknown.length === 0 ? { fits: true } : { fits: false, refusals, unknown }
}

/** What speaks against the part; `true` where it is right or not needed, null where unknown. */
type Judged = PartRefusal | true | null

const aspects: readonly (readonly [
  PartAspect,
  (need: SensorNeed, part: SensorPart, onDay: string) => Judged,
])[] = [
  ['frequency', (need, part) => judgeFrequency(need, part)],
  ['stem', (need, part) => judgeStem(need, part)],
  ['stem-pressure', (need, part) => judgePressure(need, part)],
  ['stem-speed', (need, part) => judgeSpeed(need, part)],
  ['hole', (need, part) => judgeHole(need, part)],
  ['protocol', (need, part) => judgeProtocol(need, part)],
  [
    'age',
    (_need, { madeMonth, shelfMonths }, onDay) =>
      madeMonth === null ? null : judgeAge(partAge(madeMonth, onDay, shelfMonths)),
  ],
  ['state', (_need, { state }) => (state === null ? null : judgeState(state))],
]

const judgeFrequency = (need: SensorNeed, { frequenciesMHz }: SensorPart): Judged => {
  if (frequenciesMHz === null || frequenciesMHz.length === 0) return null
  return (
    frequenciesMHz.some((megahertz) => isSameFrequency(megahertz, need.frequencyMHz)) || {
      aspect: 'frequency',
      foundMHz: frequenciesMHz,
      wantedMHz: need.frequencyMHz,
    }
  )
}

const judgeStem = ({ stems }: SensorNeed, { stem }: SensorPart): Judged =>
  stem === null ? null : stems.includes(stem) || { aspect: 'stem', found: stem, wanted: stems }

/** Most that a snap-in stem may hold and how fast it may run where its maker states nothing else. */
const snapIn = {
  pressure: inKilopascals({ value: 65, unit: 'psi' }),
  speed: kilometersPerHour(210),
}

const judgePressure = ({ highestCold }: SensorNeed, { stem, ratedPressure }: SensorPart): Judged => {
  const rated = ratedPressure ?? (stem === 'snap-in' ? snapIn.pressure : null)
  if (rated === null || highestCold === null) return null
  return (
    !above(highestCold, rated) || {
      aspect: 'stem-pressure',
      ratedPsi: inPsi(rated),
      highestColdPsi: inPsi(highestCold),
    }
  )
}

const judgeSpeed = ({ fastest }: SensorNeed, { stem, ratedSpeed }: SensorPart): Judged => {
  if (fastest === null) return true
  const rated = ratedSpeed ?? (stem === 'snap-in' ? snapIn.speed : null)
  if (rated === null) return stem === 'clamp-in' ? true : null
  return fastest <= rated || { aspect: 'stem-speed', ratedKmh: rated, fastestKmh: fastest }
}

const judgeHole = (need: SensorNeed, { hole }: SensorPart): Judged => {
  if (need.hole === null) return true
  if (hole === null) return null
  return (
    Math.abs(hole - need.hole) < 0.05 || {
      aspect: 'hole',
      foundMillimeters: hole,
      wantedMillimeters: need.hole,
    }
  )
}

const judgeProtocol = ({ protocol }: SensorNeed, { protocols }: SensorPart): Judged =>
  protocols === null ? null : protocols.includes(protocol) || { aspect: 'protocol', wanted: protocol }

const judgeAge = (age: PartAge): Judged => age === 'fresh' || { aspect: 'age', age }

const judgeState = (state: PartState): Judged => {
  switch (state.state) {
    case 'blank':
      return true
    case 'programmed':
      return { aspect: 'state', state: 'programmed', for: state.for }
    case 'held-back':
      return { aspect: 'state', state: 'held-back', why: state.why }
    default:
      return { aspect: 'state', state: state.state }
  }
}

/** To a tenth. */
const inPsi = (value: GaugeKilopascals): number =>
  Number(pressureIn('psi', { value, unit: 'kPa' }).toFixed(1))
