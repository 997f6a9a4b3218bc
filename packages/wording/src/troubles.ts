import type { FoundKind } from '@bayledger/ledger/state'
import type { WheelPosition } from '@bayledger/reckoning/wheels'

/** What a language calls what is not right at a wheel. */
export type TroublesWording = {
  /** As the choice of a technician: "A stud is damaged". */
  readonly names: Readonly<Record<FoundKind, string>>
  /** What the desk says to the customer. */
  readonly told: Readonly<Record<FoundKind, (wheel: WheelPosition | null) => string>>
}
