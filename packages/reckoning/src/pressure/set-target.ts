import type { TemperatureQuality } from '../sheet.ts'
import { kilopascalsPerPsi } from '../units/exact-factors.ts'
import { metersFromFeet } from '../units/length-units.ts'
import { inKilopascals } from '../units/pressure-units.ts'
import { inKelvin } from '../units/temperature-units.ts'
import { airPressureAtAltitude } from './air-pressure.ts'
import { shiftPressure } from './shift-pressure.ts'

export type SetTargetOf = {
  readonly placardPsi: number
  /** `null`: not on the sheet. */
  readonly sidewallMaximumPsi: number | null
  readonly outdoorFahrenheit: number
  /** Of the air in the tire; `null`: nobody measured it. */
  readonly tireFahrenheit: number | null
  readonly tires: 'cold' | 'driven' | 'indoor-warmed'
  readonly altitudeFeet: number
}

export type SetTarget = {
  /** Gauge pressure to set now, in psi, to a tenth. */
  readonly psi: number
  readonly placardPsi: number
  readonly quality: TemperatureQuality
  /** A cap held the target below what the temperature asks for: the tire must be finished cold. */
  readonly capped: boolean
  readonly says: string
}

/**
 * The pressure to set a tire to while it is warmer than the air outside, so that it reads the label's figure once
 * it is cold: the label's figure shifted from the outdoor temperature to the tire's (gas law), never below the
 * label, never above the sidewall's maximum, and never more than the greater of 6 psi and 15 % above the label
 * (the cap is common practice, no source). A temperature that nobody measured carries nothing. The vehicle maker's
 * label governs. 35 psi in a 70 °F bay with 20 °F outside at sea level: 40.2 psi.
 */
export const setTarget = (of: SetTargetOf): SetTarget => {
  const { placardPsi, sidewallMaximumPsi, outdoorFahrenheit } = of
  const tire = of.tireFahrenheit ?? outdoorFahrenheit
  const quality = qualityOf(of)
  const asked = Math.max(placardPsi, shifted(of, tire))
  const margin = Math.max(6, 0.15 * placardPsi)
  const highest = Math.max(
    placardPsi,
    Math.min(placardPsi + margin, sidewallMaximumPsi ?? Number.POSITIVE_INFINITY),
  )
  const capped = asked > highest
  const psi = toTenth(Math.min(asked, highest))
  return { psi, placardPsi, quality, capped, says: wordsFor({ psi, placardPsi, capped, quality }, of.tires) }
}

const qualityOf = ({ tireFahrenheit, tires }: SetTargetOf): TemperatureQuality =>
  tireFahrenheit === null ? 'assumed' : tires === 'driven' ? 'estimated' : 'measured'

const shifted = (
  { placardPsi, outdoorFahrenheit, altitudeFeet }: SetTargetOf,
  tireFahrenheit: number,
): number => {
  const air = airPressureAtAltitude(metersFromFeet(altitudeFeet))
  const gauge = inKilopascals({ value: placardPsi, unit: 'psi' })
  const kPa = shiftPressure({
    gauge,
    from: inKelvin({ value: outdoorFahrenheit, unit: 'F' }),
    to: inKelvin({ value: tireFahrenheit, unit: 'F' }),
    airBefore: air,
    airAfter: air,
  })
  return kPa / kilopascalsPerPsi
}

const toTenth = (psi: number): number => Math.round(psi * 10) / 10

const wordsFor = (
  { psi, placardPsi, capped, quality }: Omit<SetTarget, 'says'>,
  tires: SetTargetOf['tires'],
): string => {
  const over = toTenth(psi - placardPsi)
  if (quality === 'assumed' && tires !== 'cold')
    return `The label's ${placardPsi} psi: nobody measured the tire, and a warm one will read low once it is cold. Measure it.`
  if (capped) return `Set ${psi.toFixed(1)} psi at most now, and set the tire again when it is cold.`
  if (over === 0) return `The label's ${placardPsi} psi, as it is.`
  return `${over.toFixed(1)} psi over the label's ${placardPsi}, because the tire is warm (temperature ${quality}).`
}
