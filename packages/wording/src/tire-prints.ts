import type { UnreadPrint } from '@bayledger/ledger/subjects/arrival/sidewall'
import type { SizeComparison } from '@bayledger/reckoning/tire/compare-sizes'
import type { TireAge } from '@bayledger/reckoning/tire/tire-age'
import type { TreadAcross, WearHint, WearSeen } from '@bayledger/reckoning/tire/wear-hints'
import type { WheelPosition } from '@bayledger/reckoning/wheels'

/** A tire that is not the one that the sheet names. */
export type OtherTire = {
  readonly wheel: WheelPosition
  readonly onTire: string
  readonly bySheet: string
  readonly differs: SizeComparison
}

/** A tread that is worn more at one place than at another: how, and what was read from the inner to the outer shoulder. */
export type UnevenTread = {
  readonly wheel: WheelPosition
  readonly across: TreadAcross
  readonly hint: Exclude<WearHint, 'even'>
}

/** What is seen or felt around a tire. */
export type WornAround = { readonly wheel: WheelPosition; readonly seen: Exclude<WearSeen, 'none'> }

export type TirePrintsWording = {
  /** Why what a sidewall should say could not be read. */
  readonly unread: Readonly<Record<UnreadPrint, string>>
  readonly otherTire: (of: OtherTire) => string
  readonly age: (age: TireAge) => string
  /** What wear hints at and what to check; a hint, never a verdict. */
  readonly wornAcross: (of: UnevenTread) => string
  readonly wornAround: (of: WornAround) => string
}
