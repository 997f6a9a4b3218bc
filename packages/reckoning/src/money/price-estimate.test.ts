import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Finding } from '../diagnosis/diagnosis.ts'
import type { SpecificationSheet } from '../sheet.ts'
import type { WheelPosition } from '../wheels.ts'
import { finding, nothingOpened, demoPrices as prices, sheetWith } from './demo-prices.test-support.ts'
import type { OfferedBundle } from './offer.ts'
import { offerBundles } from './offer-bundles.ts'
import { priceEstimate } from './price-estimate.ts'
import { disposalLine, laborLine } from './price-lines.ts'
import { PriceList } from './price-list.ts'
import { totalsAreRight, totalsOfLines } from './totals.ts'

const estimateFor = (
  sheet: SpecificationSheet,
  findings: Finding[],
  look: 'charged' | 'waived' = 'charged',
) =>
  priceEstimate({
    bundles: offerBundles({
      diagnosis: { ruleSet: '1', primary: null, findings, contradictions: [], unchecked: [], nextChecks: [] },
      sheet,
      prices,
      look,
      opened: nothingOpened,
    }),
    prices,
    revision: 1,
    readyAt: null,
  })

/** Labor of an amount, as hours at a rate that gives it. */
const laborOf = (cents: number) =>
  laborLine({ ...prices, laborCentsPerHour: cents }, 'relearn', 'relearn', 100)

const utility = sheetWith('235/60R18', 315, 'clamp-in')
const silent = (...wheels: WheelPosition[]) => finding('sensor-silent', wheels, ['sensor', 'relearn'])

describe('an estimate', () => {
  // Invented prices of the demo shop; the sums were worked by hand from them.
  it.each([
    ['one clamp-in sensor', estimateFor(utility, [silent('RR')]), 20_340],
    [
      'one on a low-profile tire',
      estimateFor(sheetWith('275/35R19', 433.92, 'clamp-in'), [silent('LR')]),
      20_760,
    ],
    ['one 2.4 GHz sensor', estimateFor(sheetWith('225/50R18', 2_440, 'clamp-in'), [silent('LF')]), 23_523],
    ['one snap-in sensor', estimateFor(sheetWith('205/55R16', 433.92, 'snap-in'), [silent('RF')]), 19_384],
    ['two sensors', estimateFor(sheetWith('225/65R17', 315, 'clamp-in'), [silent('LF', 'RR')]), 32_490],
    [
      'relearn only',
      estimateFor(utility, [finding('other-wheel-set', ['LF', 'RF', 'RR', 'LR'], ['relearn'])]),
      9_555,
    ],
    ['reset, look waived', estimateFor(utility, [finding('reset-only', [], ['reset'])], 'waived'), 2_730],
    [
      'finding a leak, look waived',
      estimateFor(utility, [finding('slow-leak', ['LR'], ['leak-find'])], 'waived'),
      // 38.00 + 7.50 + 5 % of 38.00 for supplies + 6.25 % tax of 7.50
      4_787,
    ],
    [
      'pressures, look waived',
      estimateFor(utility, [finding('cold-weather', ['LF'], ['pressure-set'])], 'waived'),
      0,
    ],
    ['a look that found nothing to sell', estimateFor(utility, []), 5_200],
  ] as const)('for %s comes to the shop’s own figure', (_, estimate, totalCents) => {
    expect(estimate.money.totals.totalCents).toBe(totalCents)
    expect(totalsAreRight(estimate)).toBe(true)
  })

  it.each([
    ['245/50R19 98W', true],
    ['245/55R19 98W', false],
    ['LT265/45R20 E', true],
    ['33x12.50R15LT', false],
    ['245/50', false],
  ])('on tires of %s asks the low-profile price: %s', (size, low) => {
    const lines = estimateFor(sheetWith(size, 315, 'clamp-in'), [silent('LR')]).bundles[0]?.money.lines ?? []
    expect(lines.some(({ lineKey }) => lineKey === 'wheel-service-low')).toBe(low)
    expect(lines.some(({ lineKey }) => lineKey === 'wheel-service')).toBe(!low)
  })

  it('offers a set of four beside one, each with its whole price, and counts only the one', () => {
    const four = finding('set-of-four-worth-offering', ['LF', 'RF', 'RR', 'LR'], ['set-of-four'])
    const estimate = estimateFor(sheetWith('225/65R17', 315, 'clamp-in'), [silent('LF', 'RR'), four])
    expect(estimate.bundles.map(({ money }) => money.totals.totalCents)).toEqual([27_290, 51_500, 5_200])
    expect(estimate.money.totals.totalCents).toBe(32_490)
  })

  it('charges the supplies fee up to its cap over all bundles, and an alternative to the cap of what it replaces', () => {
    const labor = (bundleKey: string, cents: number, alternativeTo: string | null) => ({
      bundleKey,
      title: 'sensor' as const,
      findings: [],
      safety: false,
      cautions: [],
      alternativeTo,
      works: [],
      lines: [disposalLine(prices, ['LF']), laborOf(cents)],
    })
    const estimate = priceEstimate({
      bundles: [
        labor('one', 16_000, null),
        labor('four', 64_000, 'one'),
        labor('two', 14_000, null),
        labor('three', 10_000, null),
      ],
      prices,
      revision: 3,
      readyAt: null,
    })
    const fees = estimate.bundles.map(({ money }) =>
      money.lines.filter(({ lineKey }) => lineKey === 'supplies'),
    )
    expect(fees.map(([fee]) => fee?.amountCents)).toEqual([800, 1_200, 400, undefined])
    expect(fees[0]).toMatchObject([{ code: 'supplies', kind: 'fee', taxClass: 'fee' }])
    expect(totalsAreRight(estimate)).toBe(true)
  })

  it('carries the figures of its price list by value', () => {
    expect(estimateFor(utility, [silent('RR')])).toMatchObject({
      revision: 1,
      money: {
        priceListVersion: 1,
        taxRatePercentThousandths: 6_250,
        taxedClasses: ['parts'],
        taxBasis: 'invoice',
      },
    })
  })

  it('costs nothing where nothing is to be done and the look is waived', () => {
    expect(estimateFor(utility, [], 'waived').money.totals.totalCents).toBe(0)
  })

  it('counts the labor of the look in the supplies fee of the first work and of its alternative, once', () => {
    const four = finding('set-of-four-worth-offering', ['LF', 'RF', 'RR', 'LR'], ['set-of-four'])
    const fees = (look: 'charged' | 'waived') =>
      estimateFor(
        utility,
        [silent('RR'), four, finding('slow-leak', ['LF'], ['leak-find'])],
        look,
      ).bundles.map(
        ({ money }) => money.lines.find(({ lineKey }) => lineKey === 'supplies')?.amountCents ?? 0,
      )
    // 5 % of the look's 52.00 is 2.60; the set is at the cap of 12.00 either way.
    expect(fees('charged')).toEqual([615, 1_200, 190, 0])
    expect(fees('waived')).toEqual([355, 1_030, 190, 0])
  })

  it('charges no supplies for labor that is given away', () => {
    const relearn: OfferedBundle = {
      ...{ bundleKey: 'relearn', title: 'relearn', findings: [], safety: false, cautions: [] },
      ...{ alternativeTo: null, works: [{ kind: 'relearn' }], lines: [laborOf(3_900)] },
    }
    const feeWith = (cents: number) =>
      priceEstimate({
        ...{ bundles: [relearn], prices, revision: 1, readyAt: null },
        lineDiscounts: [{ bundleKey: 'relearn', lineKey: 'relearn', reason: 'Our own work', cents }],
      }).money.totals.totalCents
    // 5 % of 39.00 is 1.95, and of 19.00 it is 0.95.
    expect([feeWith(0), feeWith(2_000), feeWith(3_900)]).toEqual([4_095, 1_995, 0])
  })

  it('sells no part where no finding offers one', () => {
    const estimate = estimateFor(utility, [finding('other-wheel-set', ['LF'], ['relearn'])])
    expect(
      estimate.bundles.flatMap(({ money }) => money.lines).some(({ taxClass }) => taxClass === 'parts'),
    ).toBe(false)
  })

  it('with a changed cent anywhere is found out', () => {
    const estimate = estimateFor(utility, [silent('RR')])
    const changed = structuredClone(estimate)
    const line = changed.bundles[0]?.money.lines[1]
    if (line) line.amountCents += 1
    expect(totalsAreRight(changed)).toBe(false)
  })

  it('has the same totals in whatever order its lines are', () => {
    const lines = estimateFor(utility, [silent('RR')]).bundles[0]?.money.lines ?? []
    fc.assert(
      fc.property(fc.shuffledSubarray(lines, { minLength: lines.length }), (shuffled) => {
        expect(totalsOfLines(shuffled, prices)).toEqual(totalsOfLines(lines, prices))
      }),
      { seed: 20260112 },
    )
  })
})

describe('a price list', () => {
  it('sells labor by tenths of an hour', () => {
    expect(PriceList.safeParse(prices).success).toBe(true)
    const finer = PriceList.safeParse({ ...prices, hours: { ...prices.hours, look: 45 } })
    expect(finer.error?.issues).toMatchObject([{ path: ['hours', 'look'], code: 'not_multiple_of' }])
  })
})
