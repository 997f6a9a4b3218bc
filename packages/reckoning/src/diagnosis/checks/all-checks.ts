import { wheelNames } from '../../wheels.ts'
import type { Facts } from '../facts/facts.ts'
import type { FieldCheck } from './field-check.ts'
import { moduleChecks } from './module-checks.ts'
import { surroundingsChecks } from './surroundings-checks.ts'
import { vehicleChecks } from './vehicle-checks.ts'
import { wheelChecks } from './wheel-checks.ts'

/** Every fact that can be checked on this vehicle, in the order in which a technician would meet them. */
export const checksFor = (facts: Facts): readonly FieldCheck[] =>
  [
    ...vehicleChecks,
    ...facts.wheels.flatMap((wheel) =>
      wheelChecks.map((check): FieldCheck & { readonly applies: () => boolean } => {
        const field = `wheels.${wheel.position}.${check.name}`
        return {
          field,
          ask: check.ask.replace('{wheel}', wheelNames[wheel.position]),
          seconds: check.seconds,
          applies: () => check.applies?.(wheel, facts) ?? true,
          suppositions: () =>
            check
              .values(wheel, facts)
              .map((value) => ({ ...check.also?.(value, wheel, facts), [field]: value })),
        }
      }),
    ),
    ...moduleChecks,
    ...surroundingsChecks,
  ].filter((check) => check.applies?.(facts) ?? true)
