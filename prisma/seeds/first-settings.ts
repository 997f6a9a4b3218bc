import type { OverrunRule } from '@bayledger/reckoning/money/overrun'
import type { PriceList } from '@bayledger/reckoning/money/price-list'

/** First prices of a shop, for its owner to change: tax of 6.25 % on parts only, supplies of 5 % of labor, at most 12 dollars. */
export const firstPrices: PriceList = {
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
    sensorDisposal: 200,
  },
  supplies: { percentThousandths: 5_000, capCents: 1_200 },
}

/** Days and months that the trade usually works with (common practice, no source). */
export const firstThresholds = { comebackDays: 90, linkDays: 7, reservationDays: 2, sensorShelfMonths: 24 }

/** What the law of a place requires of the desk. */
export type LawProfile = {
  readonly writtenEstimateAboveCents: number
  /** How far a bill may go over what was authorized. Information, not advice; the owner confirms it. */
  readonly overrun: OverrunRule
  readonly consentChannels: readonly ('in-person' | 'link' | 'telephone')[]
  readonly retentionYears: number
  readonly secondPersonForTorque: boolean
  /** The day on which the owner confirmed it; `null` until then. */
  readonly confirmedOn: string | null
}

/** The strictest reading, until the owner confirms what the law of the place requires: any added cent needs consent. */
export const strictestLaw: LawProfile = {
  writtenEstimateAboveCents: 0,
  overrun: { kind: 'none' },
  consentChannels: ['in-person', 'link', 'telephone'],
  retentionYears: 7,
  secondPersonForTorque: true,
  confirmedOn: null,
}
