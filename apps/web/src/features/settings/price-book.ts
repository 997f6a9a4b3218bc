import type { ReplyOf } from '@bayledger/contract/endpoint'
import type { getSettings } from '@bayledger/contract/settings'
import { type PriceBook, pricesOn, readPriceBook } from '@bayledger/reckoning/money/price-book'
import type { PriceList } from '@bayledger/reckoning/money/price-list'

type Settings = ReplyOf<typeof getSettings>

/** The shop's prices as its owner keeps them; `null` where the shop has set none that can be read. */
export const priceBookIn = (settings: Settings | undefined): PriceBook | null =>
  readPriceBook(settings?.settings.find(({ kind }) => kind === 'prices')?.body)

/** The prices of today where the shop is, its seasons counted in; `null` where it has set none that can be read. */
export const pricesToday = (settings: Settings | undefined, now: Date): PriceList | null => {
  const book = priceBookIn(settings)
  const timeZone = settings?.locations[0]?.timeZone
  const day = new Intl.DateTimeFormat('en-CA', timeZone === undefined ? {} : { timeZone }).format(now)
  return book && pricesOn(book, day)
}
