import type { PriceList } from './price-list.ts'

/** First prices of a shop, for its owner to change: tax of 6.25 % on parts only, supplies of 5 % of labor, at most 12 dollars. */
export const firstPrices = {
  version: 1,
  taxRatePercentThousandths: 6_250,
  taxedClasses: ['parts'],
  taxBasis: 'line',
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
    punctureLabor: 1_200,
    sensorDisposal: 200,
    tire: 14_800,
    tireDisposal: 400,
    fastener: 900,
    fastenerLabor: 4_500,
  },
  supplies: { percentThousandths: 5_000, capCents: 1_200 },
} satisfies PriceList
