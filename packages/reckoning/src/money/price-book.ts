import * as z from 'zod/mini'
import { type Cents, TaxClass } from '../estimate.ts'
import { priceWords } from '../words/price-words.ts'
import { hours, key, price, share, words } from './book-fields.ts'
import { shareCents } from './cents.ts'
import { Fee } from './fees.ts'
import { PriceList } from './price-list.ts'
import { SoldItem, taxClassOf } from './sold-items.ts'

const dayOfYear = z.string().check(z.regex(/^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, priceWords.dayOfYear))

/** A share that may be taken off labor, parts and tires; `capCents`: most of it in one decision. */
export const Discount = z.strictObject({
  key,
  words,
  percentThousandths: share(0, 100),
  capCents: z.nullable(price),
})
export type Discount = z.infer<typeof Discount>

/** Days of each year, both counted, on which prices of some classes are others. They may go over the end of the year. */
export const Season = z.strictObject({
  key,
  words,
  from: dayOfYear,
  to: dayOfYear,
  classes: z.array(z.enum(['labor', 'parts', 'tire'])).check(z.minLength(1, priceWords.someClass)),
  percentThousandths: share(-50, 100),
})
export type Season = z.infer<typeof Season>

/** The most that each role may take off, as a share. */
export const DiscountLimits = z.strictObject({
  advisor: share(0, 100),
  lead: share(0, 100),
  manager: share(0, 100),
  owner: share(0, 100),
})
export type DiscountLimits = z.infer<typeof DiscountLimits>

/** How many things a shop sells by hand. */
export const mostItems = 60

const isEachOnce = (list: readonly { readonly key: string }[]): boolean =>
  new Set(list.map((one) => one.key)).size === list.length
const listOf = <S extends typeof Fee | typeof Discount | typeof Season | typeof SoldItem>(
  schema: S,
  most: number,
) =>
  z.array(schema).check(
    z.maxLength(most),
    z.refine((list) => isEachOnce(list as { key: string }[]), priceWords.eachOnce),
  )

/**
 * All that a shop asks money for, as its owner edits it. A price that is `null` is of something that the shop does not sell.
 *
 * @units Cents; hundredths of an hour in whole tenths; thousandths of a percent.
 */
export const PriceBookContent = z.strictObject({
  taxRatePercentThousandths: share(0, 100),
  taxedClasses: z.array(TaxClass),
  taxBasis: z.enum(['line', 'invoice']),
  laborCentsPerHour: price,
  hours: z.strictObject({
    look: hours,
    relearnFirst: hours,
    relearnEachMore: hours,
    reset: hours,
    rotation: z.nullable(hours),
    season: z.nullable(hours),
    torqueAgain: z.nullable(hours),
    spare: z.nullable(hours),
    pressures: z.nullable(hours),
  }),
  lowProfileAspect: z.int().check(z.gte(20), z.lte(80)),
  prices: z.strictObject({
    wheelService: price,
    wheelServiceLowProfile: price,
    repairLabor: price,
    sensorSnapIn: price,
    sensorClampIn: price,
    sensorHighBand: price,
    kitSnapIn: price,
    kitClampIn: price,
    repairUnit: price,
    sensorDisposal: price,
    punctureLabor: z.nullable(price),
    tire: z.nullable(price),
    tireDisposal: z.nullable(price),
    fastener: z.nullable(price),
    fastenerLabor: z.nullable(price),
  }),
  supplies: z.strictObject({ percentThousandths: share(0, 50), capCents: price }),
  fees: listOf(Fee, 12),
  discounts: listOf(Discount, 12),
  discountLimits: DiscountLimits,
  seasons: listOf(Season, 8),
  items: listOf(SoldItem, mostItems),
})
export type PriceBookContent = z.infer<typeof PriceBookContent>

/** As it is stored. Form 1 was the price list alone; form 2 had neither works that a customer asks for nor items. */
export const PriceBook = z.strictObject({ form: z.literal(3), version: z.int(), ...PriceBookContent.shape })
const PriceBook2 = z.strictObject({
  ...z.omit(PriceBook, { items: true }).shape,
  form: z.literal(2),
  hours: z.strictObject({ look: hours, relearnFirst: hours, relearnEachMore: hours, reset: hours }),
})
export type PriceBook = z.infer<typeof PriceBook>

/** Who may take off what where nobody has said it: the owner, and a manager a little. */
const firstLimits: DiscountLimits = { advisor: 0, lead: 0, manager: 10_000, owner: 100_000 }

/**
 * A stored version of the prices in today's form; `null` where it cannot be read. Forms 1 and 2 are read as
 * books without what came later, and are never rewritten.
 *
 * @source This program's own rule.
 */
export const readPriceBook = (body: unknown): PriceBook | null => {
  const read = PriceBook.safeParse(body)
  if (read.success) return read.data
  const second = PriceBook2.safeParse(body)
  if (second.success)
    return { ...second.data, form: 3, hours: { ...second.data.hours, ...unsold }, items: [] }
  const first = PriceList.safeParse(body)
  if (!first.success) return null
  const { prices, hours: sold, fees: _fees, items: _items, ...rest } = first.data
  const { punctureLabor, tire, tireDisposal, fastener, fastenerLabor, ...always } = prices
  return {
    form: 3,
    ...rest,
    hours: {
      look: sold.look,
      relearnFirst: sold.relearnFirst,
      relearnEachMore: sold.relearnEachMore,
      reset: sold.reset,
      rotation: sold.rotation ?? null,
      season: sold.season ?? null,
      torqueAgain: sold.torqueAgain ?? null,
      spare: sold.spare ?? null,
      pressures: sold.pressures ?? null,
    },
    prices: {
      ...always,
      punctureLabor: punctureLabor ?? null,
      tire: tire ?? null,
      tireDisposal: tireDisposal ?? null,
      fastener: fastener ?? null,
      fastenerLabor: fastenerLabor ?? null,
    },
    fees: [],
    discounts: [],
    discountLimits: firstLimits,
    seasons: [],
    items: first.data.items ?? [],
  }
}

/** Works that a customer asks for, in a book from before they were sold. */
const unsold = { rotation: null, season: null, torqueAgain: null, spare: null, pressures: null }

/**
 * The seasons that a day lies in; it is named where the shop is, as 2026-01-12.
 * @source This program's own rule: both ends of a season belong to it.
 */
export const seasonsOn = ({ seasons }: Pick<PriceBook, 'seasons'>, day: string): Season[] =>
  seasons.filter(({ from, to }) => {
    const now = day.slice(5)
    return from <= to ? from <= now && now <= to : from <= now || now <= to
  })

type PriceName = keyof PriceList['prices']
const classOf: Readonly<Record<PriceName, Season['classes'][number] | 'fee'>> = {
  wheelService: 'labor',
  wheelServiceLowProfile: 'labor',
  repairLabor: 'labor',
  punctureLabor: 'labor',
  fastenerLabor: 'labor',
  sensorSnapIn: 'parts',
  sensorClampIn: 'parts',
  sensorHighBand: 'parts',
  kitSnapIn: 'parts',
  kitClampIn: 'parts',
  repairUnit: 'parts',
  fastener: 'parts',
  tire: 'tire',
  tireDisposal: 'fee',
  sensorDisposal: 'fee',
}

/**
 * The prices of a day, with its seasons one after another: what an estimate that is built on this day takes.
 *
 * @formula price + price · percent, rounded half up to the cent, for each season in the book's order
 * @units Cents; `day` where the shop is, as 2026-01-12.
 * @source This program's own rule.
 */
export const pricesOn = (book: PriceBook, day: string): PriceList => {
  const seasons = seasonsOn(book, day)
  const inSeason = (cents: Cents, taxClass: string): Cents =>
    seasons
      .filter(({ classes }) => classes.some((one) => one === taxClass))
      .reduce((sum, { percentThousandths }) => sum + shareCents(sum, percentThousandths), cents)
  const { form: _form, discounts: _discounts, discountLimits: _limits, seasons: _seasons, ...list } = book
  const prices = Object.entries(book.prices).flatMap(([name, cents]) =>
    cents === null ? [] : [[name, inSeason(cents, classOf[name as PriceName])] as const],
  )
  return {
    ...list,
    hours: Object.fromEntries(
      Object.entries(book.hours).filter(([, time]) => time !== null),
    ) as PriceList['hours'],
    items: book.items.map((item) => ({ ...item, cents: inSeason(item.cents, taxClassOf[item.kind]) })),
    laborCentsPerHour: inSeason(book.laborCentsPerHour, 'labor'),
    prices: Object.fromEntries(prices) as PriceList['prices'],
  }
}
