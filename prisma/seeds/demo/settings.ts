import { firstPrices as prices } from '@bayledger/reckoning/money/first-prices'
import { firstItems } from '../first-items.ts'
import { firstThresholds } from '../first-settings.ts'
import { demoId } from './seeded.ts'

/** The inspection fee: 0.4 h of labor, agreed with the customer before the inspection. */
export const lookFeeCents = (prices.hours.look * prices.laborCentsPerHour) / 100

type Json = string | number | boolean | null | readonly Json[] | { readonly [name: string]: Json }

/** A first version of a setting that holds for the whole shop. */
export type DemoSetting = {
  readonly id: string
  readonly kind: string
  readonly version: number
  readonly body: { readonly [name: string]: Json }
}

const setting = (kind: string, body: { readonly [name: string]: Json }): DemoSetting => ({
  id: demoId(`setting/${kind}/1`),
  kind,
  version: 1,
  body,
})

/** What each may take off a price where a shop's prices do not say it, in thousandths of a percent: see `readPriceBook`. */
export const discountLimits = { advisor: 0, lead: 0, manager: 10_000, owner: 100_000 }

export const settings: readonly DemoSetting[] = [
  setting('prices', { ...prices, items: firstItems.map((item) => ({ ...item })) }),
  setting('report-head', {
    lines: ['Tamber Street Tire & Wheel', '14 Tamber Street, Brindle Falls'],
    telephone: '+15555550100',
  }),
  setting('thresholds', firstThresholds),
]
