import type { Diagnosis } from '../diagnosis/diagnosis.ts'
import type { Bundle, EstimateLine } from '../estimate.ts'
import type { SpecificationSheet } from '../sheet.ts'
import type { PriceList } from './price-list.ts'

/** A bundle with its lines, before the supplies fee and the totals are known. */
export type OfferedBundle = Bundle & { readonly lines: readonly EstimateLine[] }

export type OfferOf = {
  readonly diagnosis: Diagnosis
  readonly sheet: SpecificationSheet
  readonly prices: PriceList
  /**
   * The terms that the customer agreed to. Only where it is charged whatever is authorized does the estimate hold its
   * price; where work waives it, it is due by the consent to look.
   */
  readonly look: 'charged' | 'waived-with-work' | 'waived'
}
