import { readingOrder, type WheelPosition } from '../../wheels.ts'
import type { Facts } from '../facts/facts.ts'
import type { CheckedField } from './checked-fields.ts'
import type { FieldCheck, WheelCheck } from './field-check.ts'
import { moduleChecks } from './module-checks.ts'
import { surroundingsChecks } from './surroundings-checks.ts'
import { vehicleChecks } from './vehicle-checks.ts'
import { wheelChecks } from './wheel-checks.ts'

const atWheel = (check: WheelCheck, position: WheelPosition): FieldCheck => {
  const field: CheckedField = `wheels.${position}.${check.name}`
  return {
    field,
    seconds: check.seconds,
    applies: (facts) => {
      const wheel = facts.wheel(position)
      return wheel !== undefined && (check.applies?.(wheel, facts) ?? true)
    },
    isWorthIt: (facts) => {
      const wheel = facts.wheel(position)
      return wheel === undefined || (check.isWorthIt?.(wheel, facts) ?? true)
    },
    suppositions: (facts) => {
      const wheel = facts.wheel(position)
      if (wheel === undefined) return []
      return check
        .values(wheel, facts)
        .map((value) => ({ ...check.also?.(value, wheel, facts), [field]: value }))
    },
  }
}

/** Every fact that can be checked on some vehicle, in the order in which a technician would meet them. */
export const allChecks: readonly FieldCheck[] = [
  ...vehicleChecks,
  ...readingOrder.flatMap((position) => wheelChecks.map((check) => atWheel(check, position))),
  ...moduleChecks,
  ...surroundingsChecks,
]

/** Those that this vehicle has. */
export const checksFor = (facts: Facts): readonly FieldCheck[] =>
  allChecks.filter((check) => check.applies?.(facts) ?? true)
