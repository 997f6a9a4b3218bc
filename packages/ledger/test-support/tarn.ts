import { firstPrices } from '@bayledger/reckoning/money/first-prices'
import type { PriceList } from '@bayledger/reckoning/money/price-list'
import type { CompleteSheet } from '@bayledger/reckoning/sheet'
import type { RoadPosition } from '@bayledger/reckoning/wheels'
import { utilitySheet } from '../../reckoning/test-support/utility-sheet.ts'
import { advisor, lead } from './shop.ts'

const manual = {
  kind: 'maker-manual',
  reference: "owner's manual, page 312",
  enteredBy: advisor.id,
  verifiedBy: lead.id,
} as const

/** An invented utility vehicle: 35 psi all round, five nuts at 100 lbf·ft, 315 MHz clamp-in, learns while driven. */
export const tarn: CompleteSheet = {
  ...utilitySheet,
  sources: { placard: manual, studTorque: manual, frequency: manual },
}

/** The first prices of a shop, with figures of its own for a further relearn and for low profile tires. */
export const prices: PriceList = {
  ...firstPrices,
  taxBasis: 'invoice',
  hours: { ...firstPrices.hours, relearnEachMore: 20 },
  lowProfileAspect: 40,
}

/** What each wheel holds and says as it comes; the right rear sensor is silent. */
export const asReceived: Readonly<
  Record<RoadPosition, { readonly psi: number; readonly id: string | null }>
> = {
  LF: { psi: 32.8, id: '0A1B2C10' },
  RF: { psi: 32.6, id: '0A1B2C11' },
  RR: { psi: 32.7, id: null },
  LR: { psi: 32.9, id: '0A1B2C13' },
}

/** What the vehicle still has stored for the silent wheel, and what the new sensor is given. */
export const oldRightRearId = '0A1B2C12'
export const newRightRearId = '0A1B2CF7'
