import type { Evidence } from '../../evidence/evidence-schema.ts'
import { kelvin, meters } from '../../evidence/si.ts'
import { airAtSeaLevel, airPressureAtAltitude } from '../../pressure/air-pressure.ts'
import type { AbsoluteKilopascals, Kelvin } from '../../units/measured.ts'
import { thresholds } from '../thresholds.ts'

/** Temperatures in kelvin and air pressures in kPa around the vehicle; null where not checked or impossible. */
export type PlaceFacts = {
  readonly outdoor: Kelvin | null
  readonly tireTemperature: Kelvin | null
  readonly overnightLow: Kelvin | null
  /** Whether the tires are known to be warmer than the air outside. */
  readonly tiresWarm: boolean
  readonly tiresCold: boolean
  readonly driven: boolean
  /** Sea level if the altitude is not known: that changes a temperature correction very little. */
  readonly air: AbsoluteKilopascals
  readonly airKnown: AbsoluteKilopascals | null
  readonly lastSetTemperature: Kelvin | null
  readonly lastSetAir: AbsoluteKilopascals | null
  readonly minutesDriven: number | null
  /** Impossible typed temperatures, by field. */
  readonly impossibleFields: readonly string[]
}

export const readPlace = (evidence: Evidence): PlaceFacts => {
  const { surroundings, units } = evidence
  const impossibleFields: string[] = []
  const temperature = (field: string, value: number | null | undefined): Kelvin | null => {
    if (value === null || value === undefined) return null
    const inKelvin = kelvin(value, units.temperature)
    if (isPlausible(inKelvin)) return inKelvin
    impossibleFields.push(field)
    return null
  }
  const air = (altitude: number | null | undefined): AbsoluteKilopascals | null =>
    altitude === null || altitude === undefined
      ? null
      : airPressureAtAltitude(meters(altitude, units.altitude))
  const airKnown = air(surroundings?.altitude)
  return {
    outdoor: temperature('surroundings.outdoor', surroundings?.outdoor),
    tireTemperature: temperature('surroundings.tireTemperature', surroundings?.tireTemperature),
    overnightLow: temperature('surroundings.overnightLow', surroundings?.overnightLow),
    tiresWarm: surroundings?.tires === 'driven' || surroundings?.tires === 'indoor-warmed',
    tiresCold: surroundings?.tires === 'cold',
    driven: surroundings?.tires === 'driven',
    air: airKnown ?? airAtSeaLevel,
    airKnown,
    lastSetTemperature: temperature('surroundings.lastSet.temperature', surroundings?.lastSet?.temperature),
    lastSetAir: air(surroundings?.lastSet?.altitude),
    minutesDriven: surroundings?.minutesDriven ?? null,
    impossibleFields,
  }
}

/** The bounds are possible values; a millikelvin of tolerance allows for conversion between scales. */
const isPlausible = (inKelvin: Kelvin): boolean =>
  inKelvin >= thresholds.coldestPlausible - 0.001 && inKelvin <= thresholds.hottestPlausible + 0.001
