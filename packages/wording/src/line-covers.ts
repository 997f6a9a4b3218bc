import type { EstimateLine } from '@bayledger/reckoning/estimate'
import { isFree, listCentsOf } from '@bayledger/reckoning/money/cover-bundles'
import type { Cover, LineCover } from '@bayledger/reckoning/money/line-cover'

type Charged = Extract<Cover, { is: 'charged' }>

/** What a customer reads of a warranty at a line. Prices, days and miles are formatted. */
export type LineCoversWording = {
  /** `price`: what the line would cost. `miles`: what the odometer may read at most; `null`: however many. */
  readonly covered: (of: {
    readonly term: 'sensor' | 'labor'
    readonly order: string
    readonly price: string
    readonly until: string
    readonly miles: string | null
  }) => string
  readonly charged: Readonly<
    Record<Charged['why'], (of: { readonly until: string; readonly miles: string }) => string>
  >
  /** What a person decided against the terms, with the reason in their words. */
  readonly waived: (price: string, why: string) => string
  readonly refused: (why: string) => string
  /** Of a whole offer: how much of it the warranty covers, before tax. */
  readonly part: (price: string) => string
  readonly day: (day: string) => string
  readonly count: (miles: number) => string
}

const dollars = (cents: number): string =>
  (cents / 100).toLocaleString('en-US', { style: 'currency', currency: 'USD' })

/** Whether a line of a comeback is covered, until when, and why not, as the customer reads it; `null`: nothing is said of it. */
export const coverSentence = (
  words: LineCoversWording,
  line: EstimateLine,
  covers: readonly LineCover[] | undefined,
): string | null => {
  const cover = covers?.find(({ lineKey }) => lineKey === line.lineKey)
  if (cover === undefined) return null
  const price = dollars(listCentsOf(line))
  const why = line.cover?.why ?? ''
  if (cover.decided !== null) return isFree(cover) ? words.waived(price, why) : words.refused(why)
  const { judged } = cover
  if (judged.is === 'open') return null
  const until = judged.until === null ? '' : words.day(judged.until)
  const miles = judged.untilMiles === null ? null : words.count(judged.untilMiles)
  return judged.is === 'charged'
    ? words.charged[judged.why]({ until, miles: miles ?? '' })
    : words.covered({ term: judged.term, order: judged.orderNumber, price, until, miles })
}

/** How much of an offer is covered, and why the rest is not, each reason once; `null`: nothing is said of a warranty. */
export const coverNote = (
  words: LineCoversWording,
  lines: readonly EstimateLine[],
  covers: readonly LineCover[] | undefined,
): string | null => {
  if (covers === undefined) return null
  const free = new Set(covers.filter(isFree).map(({ lineKey }) => lineKey))
  const covered = lines
    .filter(({ lineKey }) => free.has(lineKey))
    .reduce((sum, line) => sum + listCentsOf(line), 0)
  const reasons = lines
    .filter(({ lineKey }) => !free.has(lineKey))
    .flatMap((line) => coverSentence(words, line, covers) ?? [])
  const said = [...(covered > 0 ? [words.part(dollars(covered))] : []), ...new Set(reasons)]
  return said.length === 0 ? null : said.join(' ')
}
