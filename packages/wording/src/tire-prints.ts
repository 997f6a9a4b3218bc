import type { UnreadPrint } from '@bayledger/ledger/subjects/arrival/sidewall'
import type { SizeComparison } from '@bayledger/reckoning/tire/compare-sizes'
import type { TireAge } from '@bayledger/reckoning/tire/tire-age'
import type { WheelPosition } from '@bayledger/reckoning/wheels'

/** A tire that is not the one that the sheet names. */
export type OtherTire = {
  readonly wheel: WheelPosition
  readonly onTire: string
  readonly bySheet: string
  readonly differs: SizeComparison
}

export type TirePrintsWording = {
  /** Why what a sidewall should say could not be read. */
  readonly unread: Readonly<Record<UnreadPrint, string>>
  readonly otherTire: (of: OtherTire) => string
  readonly age: (age: TireAge) => string
}
