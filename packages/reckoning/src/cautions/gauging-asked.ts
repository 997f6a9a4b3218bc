import type { CautionReference } from './caution-reference.ts'
import type { CustomerCautionNumber } from './customer-cautions.ts'

/** More often than each month. */
export type GaugingEvery = 'trip' | 'week'

/** The customer cautions that call for the pressures to be gauged, and how often. */
const asked: Readonly<Partial<Record<CustomerCautionNumber, GaugingEvery>>> = {
  'CT-01': 'week',
  'CT-02': 'week',
  'CT-11': 'week',
  'CT-16': 'trip',
  'CT-17': 'week',
}

/** How often a caution tells the customer to gauge the tires; `null` if it does not mention it. */
export const gaugingAskedBy = ({ number }: CautionReference): GaugingEvery | null =>
  Object.hasOwn(asked, number) ? (asked[number as CustomerCautionNumber] ?? null) : null
