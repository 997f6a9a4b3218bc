import { gaugeOf } from './air.test-support.ts'
import { warningPointAt } from './instruments.test-support.ts'
import { axleOfCorner, type Corner, corners, type TrueVehicle } from './vehicle.test-support.ts'

/** What a tire truly holds where the vehicle is, in psi. */
export type TireTruth = {
  readonly corner: Corner
  readonly label: number
  readonly warnAt: number
  /** At the temperature outdoors, and what it lacks there of the label. */
  readonly cold: number
  readonly deficit: number
  /** As it is gauged, warm or cold. */
  readonly now: number
  /** At the temperature at which it was set; at 68 °F too, from which the trade reckons where nobody remembers. */
  readonly asSet: readonly number[]
}

export const tireTruth = (vehicle: TrueVehicle, corner: Corner): TireTruth => {
  const { sheet, here, lastSet, air, airTemperature } = vehicle
  const label = sheet.label[axleOfCorner(corner)]
  const cold = gaugeOf(air[corner], here)
  return {
    corner,
    label,
    warnAt: warningPointAt(vehicle, corner),
    cold,
    deficit: label - cold,
    now: gaugeOf(air[corner], { ...here, fahrenheit: airTemperature[corner] }),
    asSet: [lastSet.fahrenheit, ...(lastSet.temperatureKnown ? [] : [68])].map((fahrenheit) =>
      gaugeOf(air[corner], { fahrenheit, meters: here.meters }),
    ),
  }
}

export const tireTruths = (vehicle: TrueVehicle): TireTruth[] =>
  corners.map((corner) => tireTruth(vehicle, corner))

/**
 * Whether a tire was run low: at or under half of its label or 15 psi, and, on a light truck whose sidewall does not say
 * polyester, at or under 80 % of what it was set to. `unsure`: nearer to such a limit than instruments can show.
 */
export const runLow = ({ sheet }: TrueVehicle, { label, now, asSet }: TireTruth): boolean | 'unsure' => {
  const half = sideOf(now, Math.max(label / 2, 15), 1.5 * Math.max(1, label / 50))
  const isSteel = sheet.loadClass.startsWith('LT') && sheet.casing !== 'polyester'
  const sides = isSteel ? asSet.map((psi) => sideOf(psi, 0.8 * label, 0.06 * label)) : ['over' as const]
  if (half === 'under' || sides.every((side) => side === 'under')) return true
  return half === 'over' && sides.every((side) => side === 'over') ? false : 'unsure'
}

/** On which side of a limit a pressure is; near the limit no instrument can show it. */
const sideOf = (psi: number, limit: number, near: number): 'over' | 'under' | 'unsure' => {
  if (psi <= limit - near) return 'under'
  return psi > limit + near ? 'over' : 'unsure'
}
