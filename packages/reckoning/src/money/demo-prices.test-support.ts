import type { Finding } from '../diagnosis/diagnosis.ts'
import type { SpecificationSheet } from '../sheet.ts'
import type { WheelPosition } from '../wheels.ts'
import type { PriceList } from './price-list.ts'

/** Prices of the demo shop, invented. */
export const demoPrices: PriceList = {
  version: 1,
  taxRatePercentThousandths: 6_250,
  taxedClasses: ['parts'],
  taxBasis: 'invoice',
  laborCentsPerHour: 13_000,
  hours: { look: 40, relearnFirst: 30, relearnEachMore: 10, reset: 20 },
  lowProfileAspect: 50,
  prices: {
    wheelService: 3_200,
    wheelServiceLowProfile: 3_600,
    repairLabor: 3_800,
    sensorSnapIn: 5_900,
    sensorClampIn: 6_800,
    sensorHighBand: 9_400,
    kitSnapIn: 450,
    kitClampIn: 750,
    repairUnit: 600,
    sensorDisposal: 200,
  },
  supplies: { percentThousandths: 5_000, capCents: 1_200 },
}

/** A sheet with what a price depends on. */
export const sheetWith = (
  size: string,
  frequencyMHz: number,
  stem: 'snap-in' | 'clamp-in',
): SpecificationSheet =>
  ({
    tire: { front: { size }, rear: { size }, spare: null },
    sensor: { frequencyMHz, stem },
  }) as SpecificationSheet

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
