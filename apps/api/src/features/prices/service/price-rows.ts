import { PriceBookContent } from '@bayledger/reckoning/money/price-book'
import { blankRow, type PriceRow } from './price-columns.ts'

const row = (
  item: string,
  value: number | null,
  unit: PriceRow['unit'],
  rest: Partial<PriceRow> = {},
): PriceRow => ({
  ...blankRow,
  ...rest,
  item,
  value,
  unit,
})
const dollars = (cents: number | null): number | null => (cents === null ? null : cents / 100)
const listText = (list: readonly string[]): string => list.join('; ')
const listIn = (text: string): string[] =>
  text
    .split(';')
    .map((one) => one.trim())
    .filter((one) => one !== '')

/** The price book as rows, in the order of its page. */
export const rowsOfPrices = (book: PriceBookContent): PriceRow[] => [
  row('labor-hour', dollars(book.laborCentsPerHour), '$'),
  ...Object.entries(book.hours).map(([name, hundredths]) =>
    row(`hours.${name}`, hundredths === null ? null : hundredths / 100, 'h'),
  ),
  ...Object.entries(book.prices).map(([name, cents]) => row(`prices.${name}`, dollars(cents), '$')),
  row('low-profile-aspect', book.lowProfileAspect, 'aspect'),
  row('supplies', book.supplies.percentThousandths / 1_000, '%', { cap: dollars(book.supplies.capCents) }),
  row('tax', book.taxRatePercentThousandths / 1_000, '%'),
  row('tax-classes', null, 'list', { classes: listText(book.taxedClasses) }),
  row('tax-basis', null, 'basis', { words: book.taxBasis }),
  ...Object.entries(book.discountLimits).map(([role, share]) => row(`limits.${role}`, share / 1_000, '%')),
  ...book.fees.map((fee) =>
    row(`fees.${fee.key}`, dollars(fee.cents), '$', {
      words: fee.words,
      cap: dollars(fee.capCents),
      each: fee.per,
      tax_class: fee.taxClass,
    }),
  ),
  ...book.discounts.map(({ key, words, percentThousandths, capCents }) =>
    row(`discounts.${key}`, percentThousandths / 1_000, '%', { words, cap: dollars(capCents) }),
  ),
  ...book.seasons.map(({ key, words, from, to, classes, percentThousandths }) =>
    row(`seasons.${key}`, percentThousandths / 1_000, '%', { words, from, to, classes: listText(classes) }),
  ),
  ...book.items.map(({ key, words, kind, size, cents, depositCents }) =>
    row(`items.${key}`, dollars(cents), '$', {
      words,
      kind,
      size: size ?? '',
      deposit: dollars(depositCents),
    }),
  ),
]

const cents = (value: number | null): number | null => (value === null ? null : Math.round(value * 100))
const thousandths = (value: number | null): number => Math.round((value ?? 0) * 1_000)

type Draft = {
  -readonly [Name in keyof PriceBookContent]: PriceBookContent[Name]
}

const replaced = <One extends { readonly key: string }>(list: readonly One[], one: One): One[] =>
  list.some(({ key }) => key === one.key)
    ? list.map((other) => (other.key === one.key ? one : other))
    : [...list, one]

/**
 * The price book with one row in it, as far as the row says; `null`: the row names nothing of a price book. Whether the
 * figures are right is for the book's own schema to say.
 */
const withRow = (book: Draft, { item, value, words, ...rest }: PriceRow): Draft | null => {
  const [group = '', key = ''] = item.split('.')
  switch (group) {
    case 'labor-hour':
      return { ...book, laborCentsPerHour: cents(value) ?? -1 }
    case 'hours':
      return key in book.hours ? { ...book, hours: { ...book.hours, [key]: cents(value) } } : null
    case 'prices':
      return key in book.prices ? { ...book, prices: { ...book.prices, [key]: cents(value) } } : null
    case 'low-profile-aspect':
      return { ...book, lowProfileAspect: value ?? -1 }
    case 'supplies':
      return {
        ...book,
        supplies: { percentThousandths: thousandths(value), capCents: cents(rest.cap) ?? -1 },
      }
    case 'tax':
      return { ...book, taxRatePercentThousandths: thousandths(value) }
    case 'tax-classes':
      return { ...book, taxedClasses: listIn(rest.classes) as Draft['taxedClasses'] }
    case 'tax-basis':
      return { ...book, taxBasis: words as Draft['taxBasis'] }
    case 'limits':
      return key in book.discountLimits
        ? { ...book, discountLimits: { ...book.discountLimits, [key]: thousandths(value) } }
        : null
    case 'fees': {
      const fee = {
        key,
        words,
        per: rest.each as Draft['fees'][number]['per'],
        cents: cents(value) ?? -1,
        capCents: cents(rest.cap),
        taxClass: rest.tax_class as Draft['fees'][number]['taxClass'],
      }
      return { ...book, fees: replaced(book.fees, fee) }
    }
    case 'discounts': {
      const discount = { key, words, percentThousandths: thousandths(value), capCents: cents(rest.cap) }
      return { ...book, discounts: replaced(book.discounts, discount) }
    }
    case 'seasons': {
      const season = {
        key,
        words,
        from: rest.from ?? '',
        to: rest.to ?? '',
        classes: listIn(rest.classes) as Draft['seasons'][number]['classes'],
        percentThousandths: thousandths(value),
      }
      return { ...book, seasons: replaced(book.seasons, season) }
    }
    case 'items': {
      const item = {
        key,
        words,
        kind: rest.kind as Draft['items'][number]['kind'],
        size: rest.size === '' ? null : rest.size,
        cents: cents(value) ?? -1,
        depositCents: cents(rest.deposit),
      }
      return { ...book, items: replaced(book.items, item) }
    }
    default:
      return null
  }
}

/** What is wrong with a row as it would stand in the book: what the book's schema says; `null`: nothing. */
export const faultOfRow = (book: PriceBookContent, one: PriceRow): string | 'no-such-item' | null => {
  const next = withRow(book, one)
  if (next === null) return 'no-such-item'
  const read = PriceBookContent.safeParse(next)
  return read.success ? null : (read.error.issues[0]?.message ?? '')
}

/** The book with all rows of a plan in it. */
export const withRows = (book: PriceBookContent, rows: readonly PriceRow[]): PriceBookContent =>
  PriceBookContent.parse(rows.reduce<Draft>((draft, one) => withRow(draft, one) ?? draft, book))
