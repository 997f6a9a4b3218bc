import type { Facts } from '../facts/facts.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import type { CheckedField, WheelField } from './checked-fields.ts'

/** Fields with supposed values, to see what would follow. */
export type Supposition = Readonly<Record<string, unknown>>

/**
 * One fact that can be had at the vehicle or from the customer: how long that takes, whether this vehicle has it at
 * all, and the values that it could plausibly have.
 */
export type FieldCheck = {
  readonly field: CheckedField
  /** At the vehicle, walking included (common practice, no source). */
  readonly seconds: number
  readonly applies?: (facts: Facts) => boolean
  /** Whether anything makes it worth its time; where this is absent, it always is. It counts as unchecked either way. */
  readonly isWorthIt?: (facts: Facts) => boolean
  readonly suppositions: (facts: Facts) => readonly Supposition[]
}

/** The same for a fact that each wheel has. */
export type WheelCheck = {
  readonly name: WheelField
  readonly seconds: number
  readonly applies?: (wheel: WheelFacts, facts: Facts) => boolean
  readonly isWorthIt?: (wheel: WheelFacts, facts: Facts) => boolean
  readonly values: (wheel: WheelFacts, facts: Facts) => readonly unknown[]
  /** For a value that alone would not be a possible state of the wheel. */
  readonly also?: (value: unknown, wheel: WheelFacts, facts: Facts) => Supposition
}

/** Suppositions that differ in one field only. */
export const each = (field: string, values: readonly unknown[]): Supposition[] =>
  values.map((value) => ({ [field]: value }))
