import type { Finding } from '../diagnosis/diagnosis.ts'
import type { CompleteSheet } from '../sheet.ts'
import type { WheelPosition } from '../wheels.ts'
import { firstPrices } from './first-prices.ts'
import type { OpenedTires } from './offer.ts'
import type { PriceList } from './price-list.ts'

/** The first prices of a shop, where the tax is computed on the invoice. */
export const demoPrices: PriceList = { ...firstPrices, taxBasis: 'invoice' }

/** No tire was opened yet. */
export const nothingOpened: OpenedTires = { searched: [], repairable: [] }

/** A sheet with what a price depends on. */
export const sheetWith = (size: string, frequencyMHz: number, stem: 'snap-in' | 'clamp-in'): CompleteSheet =>
  ({
    tire: { front: { size }, rear: { size }, spare: null },
    sensor: { frequencyMHz, stem },
  }) as CompleteSheet

export const finding = (
  code: Finding['code'],
  wheels: WheelPosition[],
  offers: Finding['offers'],
): Finding => ({
  code,
  wheels,
  confidence: 'firm',
  kind: 'cause',
  because: [],
  figures: {},
  offers,
  holds: [],
})
