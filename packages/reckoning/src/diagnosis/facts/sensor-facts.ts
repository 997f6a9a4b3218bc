import type { Evidence, WheelEvidence } from '../../evidence/evidence-schema.ts'
import { kelvin, kilopascals } from '../../evidence/si.ts'
import { idKey } from '../../sensor/sensor-id.ts'
import type { GaugeKilopascals, Kelvin } from '../../units/measured.ts'
import { thresholds } from '../thresholds.ts'

/** What a wheel's sensor sent; everything is null unless it answered. Pressure in kPa, temperature in kelvin. */
export type SensorFacts = {
  readonly answered: boolean
  readonly silent: boolean
  readonly tries: number
  readonly idKey: string | null
  readonly pressure: GaugeKilopascals | null
  /** Also null if the figure is impossible. */
  readonly temperature: Kelvin | null
  readonly temperatureImpossible: boolean
  readonly battery: 'ok' | 'low' | 'not-reported' | null
  readonly frequencyMHz: number | null
  readonly follows: boolean | null
}

export const readSensor = (evidence: Evidence, given: WheelEvidence | null | undefined): SensorFacts => {
  const answered = given?.answer === 'answered'
  const told = answered ? given : undefined
  const rawTemperature =
    typeof told?.sensorTemperature === 'number'
      ? kelvin(told.sensorTemperature, evidence.units.temperature)
      : null
  // A sensor sends an end of its range when its element has failed, so the ends are not readings.
  const possible =
    rawTemperature !== null &&
    rawTemperature > thresholds.coldestPlausible + 0.001 &&
    rawTemperature < thresholds.hottestPlausible - 0.001
  return {
    answered,
    silent: given?.answer === 'silent',
    tries: given?.tries ?? 0,
    idKey: typeof told?.id === 'string' ? idKey(told.id, 'hex') : null,
    pressure:
      typeof told?.sensorPressure === 'number'
        ? kilopascals(told.sensorPressure, evidence.units.pressure)
        : null,
    temperature: possible ? rawTemperature : null,
    temperatureImpossible: rawTemperature !== null && !possible,
    battery: told?.battery ?? null,
    frequencyMHz: told?.frequencyMHz ?? null,
    follows: answered ? (given?.followsPressure ?? null) : null,
  }
}
