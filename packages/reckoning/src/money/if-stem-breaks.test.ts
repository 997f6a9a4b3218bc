import { expect, it } from 'vitest'
import { utilitySheet as sheet } from '../../test-support/utility-sheet.ts'
import { isConditional } from './added-bundles.ts'
import { askedBundle } from './asked-bundles.ts'
import { demoPrices as prices } from './demo-prices.test-support.ts'
import { ifStemBreaks, stemsThatMayBreak } from './if-stem-breaks.ts'
import { priceEstimate } from './price-estimate.ts'
import { totalsAreRight } from './totals.ts'

const stems = askedBundle({ kind: 'stems', wheels: ['LF', 'RR'] }, prices, sheet)
const sensor = askedBundle({ kind: 'sensors', wheels: ['RR'] }, prices, sheet)

it('is asked where a metal stem is loosened, not where its sensor is new anyway or there is none', () => {
  expect(stemsThatMayBreak([stems])).toEqual(['LF', 'RR'])
  expect(stemsThatMayBreak([stems, sensor])).toEqual(['LF'])
  expect(ifStemBreaks(prices, sheet, [sensor])).toBeNull()
  expect(ifStemBreaks(prices, { ...sheet, system: 'indirect', sensor: null }, [stems])).toBeNull()
})

it('has the price of one sensor, learned and the old one disposed of, and nothing of it is in the total', () => {
  const question = ifStemBreaks(prices, sheet, [stems])
  if (question === null) throw new RangeError('a metal stem is loosened')
  expect(isConditional(question)).toBe(true)
  expect(question.lines.map(({ lineKey, amountCents }) => [lineKey, amountCents])).toEqual([
    ['sensor', 6_800],
    ['relearn', 3_900],
    ['sensor-disposal', 200],
  ])
  const priced = (bundles: (typeof question)[]) =>
    priceEstimate({ bundles, prices, revision: 1, readyAt: null })
  const both = priced([stems, question])
  expect(both.money.totals).toEqual(priced([stems]).money.totals)
  expect(both.bundles[1]?.money.totals.totalCents).toBeGreaterThan(10_900)
  expect(totalsAreRight(both)).toBe(true)
})
