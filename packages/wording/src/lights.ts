import type { LightBehavior } from '@bayledger/reckoning/evidence/evidence-schema'

/** What the warning light does: as a sentence reads it, and as a technician taps it. */
export type LightsWording = {
  /** A predicate after "the light": report, desk and customer. */
  readonly does: Readonly<Record<LightBehavior, string>>
  /** Short, for a tablet read from two meters; the detail is printed smaller beside it. */
  readonly choice: Readonly<Record<LightBehavior, { readonly label: string; readonly detail?: string }>>
}
