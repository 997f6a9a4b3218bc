import type { Diagnosis } from '../diagnosis/diagnosis.ts'
import type { Bundle, EstimateLine } from '../estimate.ts'
import type { SpecificationSheet } from '../sheet.ts'
import type { WheelPosition } from '../wheels.ts'
import type { PriceList } from './price-list.ts'

/** A bundle with its lines, before the supplies fee and the totals are known. */
export type OfferedBundle = Bundle & { readonly lines: readonly EstimateLine[] }

/** What became of tires since they were opened: what is sold for them follows from it. */
export type OpenedTires = {
  /** Searches for a leak that the customer has authorized, with the findings named then: each stays as it was answered. */
  readonly searched: readonly { readonly wheel: WheelPosition; readonly findings: readonly string[] }[]
  /** Tires whose holes may be repaired, by the verdict on record after the look inside. */
  readonly repairable: readonly { readonly wheel: WheelPosition; readonly holes: number }[]
}

export type OfferOf = {
  readonly diagnosis: Diagnosis
  readonly sheet: SpecificationSheet
  readonly prices: PriceList
  /**
   * The terms that the customer agreed to. Only where it is charged whatever is authorized does the estimate hold its
   * price; where work waives it, it is due by the consent to look.
   */
  readonly look: 'charged' | 'waived-with-work' | 'waived'
  readonly opened: OpenedTires
}
