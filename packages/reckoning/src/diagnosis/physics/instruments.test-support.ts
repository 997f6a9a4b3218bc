import { gaugeOf, seaLevelGaugeOf, warningPoint } from './air.test-support.ts'
import type { Random } from './random.test-support.ts'
import {
  axleOfCorner,
  type Corner,
  corners,
  type EachCorner,
  eachCorner,
  type TrueVehicle,
} from './vehicle.test-support.ts'

/**
 * Instruments as a shop has them. One gauge is wrong by the same amount on every tire, within 1 psi (2 % above 50 psi),
 * and a little more by the hand that holds it; each sensor is wrong by its own amount, within 1.5 psi; thermometers are
 * within 3 °F. How wrong they may be is common practice, no source.
 */
export type Instruments = {
  readonly gauge: (psi: number) => number
  readonly sensor: EachCorner<(psi: number) => number>
  readonly thermometer: (fahrenheit: number) => number
}

export const instrumentsFrom = (random: Random): Instruments => {
  const gaugeIsOff = random.error(0.4, 1)
  const step = random.oneOf([0.1, 0.1, 0.5])
  return {
    gauge: (psi) => {
      const coarser = Math.max(1, psi / 50)
      return Math.max(0, inSteps(psi + gaugeIsOff * coarser + random.error(0.15, 0.4), step))
    },
    sensor: eachCorner(() => {
      const isOff = random.error(0.5, 1.5)
      return (psi) => Math.max(0, inSteps(psi + isOff * Math.max(1, psi / 50), 0.2))
    }),
    thermometer: (fahrenheit) => Math.round(fahrenheit + random.error(1.5, 3)),
  }
}

const inSteps = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(2))

export type Light = 'off' | 'solid' | 'flash-then-solid'

/** By how many psi over its warning point a tire must be before a lit lamp goes out; makers differ. */
const lampGoesOutOver = 2

/**
 * The light as the driver saw it: it came on in the morning where a sensor that is heard read its warning point or less,
 * and stays until the tire is well over it. A car that warmed in a bay has not looked again. A sensor that is not heard
 * makes the light flash (49 CFR 571.138, S4.4 [read]).
 */
export const lightOf = (vehicle: TrueVehicle, { sensor }: Instruments): Light => {
  if (vehicle.dead.length > 0) return 'flash-then-solid'
  const heard = corners.filter((corner) => !vehicle.dead.includes(corner))
  const reads = (corner: Corner, fahrenheit: number): number =>
    sensor[corner](sentBy(vehicle, corner, fahrenheit))
  const cameOn = heard.some(
    (corner) => reads(corner, vehicle.here.fahrenheit) <= warningPointAt(vehicle, corner),
  )
  if (!cameOn) return 'off'
  const stays =
    vehicle.arrival !== 'driven' ||
    heard.some(
      (corner) =>
        reads(corner, vehicle.airTemperature[corner]) <= warningPointAt(vehicle, corner) + lampGoesOutOver,
    )
  return stays ? 'solid' : 'off'
}

/** What a perfect sensor sends at a temperature of the tire's air, in psi. */
export const sentBy = (vehicle: TrueVehicle, corner: Corner, fahrenheit: number): number =>
  (vehicle.sensorsReferToSea ? seaLevelGaugeOf : gaugeOf)(vehicle.air[corner], {
    fahrenheit,
    meters: vehicle.here.meters,
  })

export const warningPointAt = ({ sheet }: TrueVehicle, corner: Corner): number =>
  warningPoint(sheet.label[axleOfCorner(corner)], sheet.loadClass)
