import type { Offer } from '../diagnosis.ts'
import type { FindingCode } from '../finding-codes.ts'
import { airOf, gaugeOf } from './air.test-support.ts'
import type { Light } from './instruments.test-support.ts'
import { runLow, type TireTruth, tireTruths } from './truth.test-support.ts'
import { type Corner, corners, type TrueVehicle } from './vehicle.test-support.ts'

/** What a right diagnosis of a vehicle says, from what is true of it. */
export type Expectation = {
  /** One of these explains the light; none: there is no light to explain. */
  readonly primary: readonly FindingCode[]
  /** Each of these is found, by one or more of its codes, on exactly these wheels (anywhere, where no wheels are given). */
  readonly names: readonly Named[]
  /** What each wheel's true state calls for. */
  readonly asks: ReadonlyMap<Corner, ReadonlySet<Offer>>
  readonly stops: readonly Named[]
}

export type Named = { readonly codes: readonly FindingCode[]; readonly wheels: readonly Corner[] }

/**
 * From this lack on, in psi, a tire must be set: 2 psi is worth a word, and a gauge may be wrong by 1 psi, or 2 %
 * above 50.
 */
const worthSetting = (label: number): number => 2 - Math.max(1, label / 50)

/** Beside a tire that leaks, what the others lack may be reported tire by tire, as long as no leak is seen in it. */
const toldAlone = ['under-placard', 'warm-tire-hides-low'] as const

/** A lack common to several tires that no error of instruments hides, in psi. */
const plainlyLow = 3.5

export const expectationOf = (vehicle: TrueVehicle, light: Light): Expectation => {
  const tires = tireTruths(vehicle)
  const common = commonlyLow(vehicle, tires)
  const leaks = leaksOf(vehicle, tires)
  const ranLow = tires.filter((tire) => runLow(vehicle, tire) === true).map(({ corner }) => corner)
  const allRanLow = vehicle.leaking.length === 0 && ranLow.length > 0
  const low: Named[] = allRanLow ? [{ codes: ['tire-low'], wheels: ranLow }] : [...leaks, ...common]
  return {
    primary: primaryOf(light, low),
    names: [
      ...low,
      ...named(['sensor-silent'], vehicle.dead),
      ...named(['over-inflated'], vehicle.overfilled),
      ...(vehicle.sensorsReferToSea ? [{ codes: ['sensors-refer-to-sea-level'] as const, wheels: [] }] : []),
    ],
    asks: new Map(tires.map((tire) => [tire.corner, askedBy(vehicle, tire, allRanLow)])),
    stops: [...named(['run-low-damage-possible'], ranLow), ...named(['hot-corner'], vehicle.dragging)],
  }
}

const named = (codes: readonly FindingCode[], wheels: readonly Corner[]): Named[] =>
  wheels.length === 0 ? [] : [{ codes, wheels }]

const primaryOf = (light: Light, low: readonly Named[]): readonly FindingCode[] => {
  if (light === 'off') return []
  if (light === 'flash-then-solid') return ['sensor-silent']
  return low[0]?.codes ?? []
}

const leaksOf = (vehicle: TrueVehicle, tires: readonly TireTruth[]): Named[] => {
  const leaking = tires.filter(({ corner }) => vehicle.leaking.includes(corner))
  const isLow = leaking.every(({ cold, now, warnAt }) => Math.min(cold, now) <= warnAt - 1.5)
  return named(
    isLow ? ['tire-low'] : ['tire-low', 'slow-loss-suspected', 'slow-leak'],
    corners.filter((corner) => vehicle.leaking.includes(corner)),
  )
}

/** The tires that lack air together, by cold, by height or by the ordinary loss of months, where no instrument hides it. */
const commonlyLow = (vehicle: TrueVehicle, tires: readonly TireTruth[]): Named[] => {
  const { leaking, overfilled, dragging } = vehicle
  const apart = [...leaking, ...overfilled, ...dragging]
  const together = tires.filter(({ corner }) => !apart.includes(corner))
  if (together.length < 3 || together.some(({ deficit }) => deficit < plainlyLow)) return []
  const codes: FindingCode[] = [...commonCodes(vehicle, together), ...(leaking.length > 0 ? toldAlone : [])]
  return [{ codes, wheels: together.map(({ corner }) => corner) }]
}

const commonCodes = (vehicle: TrueVehicle, together: readonly TireTruth[]): readonly FindingCode[] => {
  const { lastSet, here } = vehicle
  if (lastSet.meters > here.meters + 500) return ['altitude-change', 'cold-weather', 'weather-and-seepage']
  if (!lastSet.temperatureKnown) return ['weather-and-seepage']
  const byCold = together.map(({ label, deficit }) => {
    const afterCold = gaugeOf(airOf(label, { ...lastSet, meters: here.meters }), here)
    return (label - afterCold) / deficit
  })
  const share = byCold.reduce((sum, one) => sum + one, 0) / byCold.length
  if (share > 0.8) return ['cold-weather']
  return share < 0.45 ? ['weather-and-seepage'] : ['cold-weather', 'weather-and-seepage']
}

const askedBy = (
  vehicle: TrueVehicle,
  { corner, label, deficit }: TireTruth,
  allRanLow: boolean,
): Set<Offer> => {
  const { leaking, overfilled, dead, dragging } = vehicle
  const isOff = Math.abs(deficit) >= worthSetting(label) || overfilled.includes(corner)
  return new Set<Offer>([
    ...(leaking.includes(corner) || allRanLow ? (['leak-find', 'pressure-set'] as const) : []),
    ...(isOff ? (['pressure-set'] as const) : []),
    ...(dead.includes(corner) ? (['sensor', 'service-kit', 'relearn'] as const) : []),
    ...(dragging.includes(corner) ? (['outside-work'] as const) : []),
  ])
}
