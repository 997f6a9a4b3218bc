import { isSameFrequency } from '../../sensor/frequency.ts'
import { thresholds } from '../thresholds.ts'
import type { Facts } from './facts.ts'
import type { WheelFacts } from './wheel-facts.ts'

/** Tried twice or more, spaced, and never answered. */
export const isSilent = (wheel: WheelFacts): boolean =>
  wheel.sensor.silent && wheel.sensor.tries >= thresholds.spacedTries

/** Silent, with a plain stem, where a sensor of this vehicle would show at the stem. */
export const hasNoSensor = (facts: Facts, wheel: WheelFacts): boolean =>
  wheel.monitored &&
  isSilent(wheel) &&
  wheel.given.valve === 'plain' &&
  facts.evidence.vehicle?.sensorMounting !== 'band'

/** Its frequency against the vehicle's; null where either is not known. */
export const frequencyFits = (facts: Facts, wheel: WheelFacts): boolean | null => {
  const needed = facts.evidence.vehicle?.sensorFrequencyMHz
  const has = wheel.sensor.frequencyMHz
  if (typeof needed !== 'number' || has === null) return null
  return isSameFrequency(has, needed)
}

/**
 * All four sensors that the vehicle itself has stored send on one frequency that is not the sheet's: the sheet is
 * wrong, not four sensors.
 */
export const sheetFrequencyDoubtful = (facts: Facts): boolean => {
  const [first] = facts.road
  return (
    facts.road.length === 4 &&
    facts.road.every(
      (wheel) =>
        wheel.sensor.idKey !== null &&
        facts.stored.all.has(wheel.sensor.idKey) &&
        frequencyFits(facts, wheel) === false &&
        isSameFrequency(wheel.sensor.frequencyMHz ?? 0, first?.sensor.frequencyMHz ?? 0),
    )
  )
}

/** Whether the vehicle stores a code of this class for this wheel. */
export const hasCode = (
  facts: Facts,
  codeClass: Facts['codes'][number]['class'],
  wheel: WheelFacts,
): boolean => facts.codes.some((code) => code.class === codeClass && code.wheel === wheel.position)

/** The vehicle itself does not hear, or says so. */
export const hasReceiverFault = (facts: Facts): boolean =>
  facts.sensing && facts.codes.some((code) => code.class === 'receiver' || code.class === 'communication')
