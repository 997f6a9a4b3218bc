import { airPressureAtAltitude } from '@bayledger/reckoning/pressure/air-pressure'
import { shiftPressure } from '@bayledger/reckoning/pressure/shift-pressure'
import { placardOf, sensorOf } from '@bayledger/reckoning/sheet'
import { metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { inKilopascals, kilopascalsIn } from '@bayledger/reckoning/units/pressure-units'
import { inKelvin } from '@bayledger/reckoning/units/temperature-units'
import { axleOf, roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { ArrivalWheel } from '../demo/arrival-check.ts'
import { tamberStreet } from '../demo/places.ts'
import { type Car, coldPressure, newId, type SensorIds } from './car.ts'
import type { Chance } from './chance.ts'
import type { Story } from './story.ts'
import { dayOf, weatherOn } from './weather.ts'

/** What the bay finds of a vehicle, before it is written down. */
export type Received = {
  readonly wheels: readonly ArrivalWheel[]
  readonly spare: number | { readonly gauge: number; readonly id: string } | null
  readonly light: 'off' | 'solid' | 'flash-then-solid'
  readonly stored: SensorIds | Record<string, never>
  /** The sensors as they would answer, also those that are silent now. */
  readonly ids: SensorIds
}

export const labelOf = (car: Car, wheel: WheelPosition): number =>
  placardOf(car.visitor.sheet)?.[axleOf(wheel)]?.psi ?? 60

/** A tire that is run with less than this may be damaged inside; none of the year's came in so low. */
const leastShare = (car: Car): number =>
  car.sheetKey === 'haywain' || car.sheetKey === 'pannier' ? 0.86 : 0.64

export const asReceived = (
  car: Car,
  story: Story,
  day: number,
  outdoor: number,
  chance: Chance,
): Received => {
  const { sheet } = car.visitor
  const isDirect = sheet.system === 'direct'
  const gaugeOf = (wheel: WheelPosition): number => {
    const lost =
      wheel === 'SP' || !(wheel in story.lost) ? (story.lost[wheel] ?? 0) : (story.lost[wheel] ?? 0)
    const cold = coldPressure(car, wheel, day, outdoor)
    const least = wheel === 'SP' ? 0 : leastShare(car) * labelOf(car, wheel)
    return Math.round(Math.max(Math.min(cold, least), cold - lost, lost > 0 ? least : 0) * 10) / 10
  }
  const heard = Object.fromEntries(
    roadPositions.map((wheel) => [
      wheel,
      story.frequencyMHz[wheel] === undefined ? car.ids[wheel] : newId(chance),
    ]),
  ) as SensorIds
  const ids: SensorIds = { ...heard, ...(car.ids.SP === undefined ? {} : { SP: car.ids.SP }) }
  const wheels = roadPositions.map((wheel): ArrivalWheel => {
    const frequencyMHz = story.frequencyMHz[wheel]
    return {
      wheel,
      gauge: gaugeOf(wheel),
      id: isDirect && !story.silent.includes(wheel) ? ids[wheel] : null,
      ...(frequencyMHz === undefined ? {} : { frequencyMHz, sensorAgeMonths: 2 }),
      tireDamage: story.damage[wheel] ?? [],
      ...(story.damage[wheel]?.includes('puncture')
        ? { punctures: [{ place: 'crown', millimeters: null, degrees: null, overlapsRepair: null }] }
        : {}),
      ...(story.stem[wheel] ? { stem: story.stem[wheel] } : {}),
    }
  })
  const spareGauge = gaugeOf('SP')
  const spare =
    sheet.spare === 'none'
      ? null
      : car.ids.SP === undefined
        ? spareGauge
        : { gauge: spareGauge, id: car.ids.SP }
  const stored: SensorIds = story.stored ?? car.ids
  const isUnheard =
    isDirect &&
    roadPositions.some(
      (wheel) =>
        story.silent.includes(wheel) ||
        story.frequencyMHz[wheel] !== undefined ||
        !Object.values(stored).includes(ids[wheel]),
    )
  const isLow =
    wheels.some(({ wheel, gauge }) => gauge - 0.4 <= 0.75 * labelOf(car, wheel)) ||
    (sheet.spareMonitored && spareGauge - 0.4 <= 0.75 * labelOf(car, 'SP'))
  return {
    wheels,
    spare,
    light: isUnheard ? 'flash-then-solid' : isLow || !isDirect ? 'solid' : 'off',
    stored: sensorOf(sheet) === null ? {} : stored,
    ids,
  }
}

/**
 * Sets back when the tires were last filled, so far that cold and seepage together bring them under the warning point: at most
 * 1.4 psi a month of seepage, on tires that nobody looked at. Where cold alone does it, nothing is changed.
 */
export const neglect = (car: Car, day: number, outdoor: number, chance: Chance): void => {
  const air = airPressureAtAltitude(metersFromFeet(tamberStreet.altitudeFeet))
  const share = chance.between(0.7, 0.745)
  for (const wheel of roadPositions) {
    const label = labelOf(car, wheel)
    const wanted = (share + chance.between(-0.006, 0.006)) * label
    for (let days = 90; days <= 300; days += 15) {
      const fahrenheit = Math.round(weatherOn(dayOf(day - days)).mean)
      const left = kilopascalsIn(
        'psi',
        shiftPressure({
          gauge: inKilopascals({ value: wanted, unit: 'psi' }),
          from: inKelvin({ value: outdoor, unit: 'F' }),
          to: inKelvin({ value: fahrenheit, unit: 'F' }),
          airBefore: air,
          airAfter: air,
        }),
      )
      const seep = (label - left) / days
      if (seep < 0 || seep > 0.046) continue
      car.air[wheel] = { psi: label, fahrenheit, day: day - days }
      car.seeps[wheel] = seep
      break
    }
  }
}
