import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { roadPositions, type WheelPosition } from '../wheels.ts'
import { coverBundle, type JudgedComeback, listCentsOf } from './cover-bundles.ts'
import { finding, nothingOpened, demoPrices as prices, sheetWith } from './demo-prices.test-support.ts'
import { ComebackCause } from './line-cover.ts'
import { offerBundles } from './offer-bundles.ts'
import { priceEstimate } from './price-estimate.ts'
import { totalsAreRight } from './totals.ts'
import { usualWarranty } from './warranty.ts'

const offered = (...wheels: WheelPosition[]) =>
  offerBundles({
    diagnosis: {
      ...{ ruleSet: '1', primary: null, contradictions: [], unchecked: [], nextChecks: [] },
      findings: [finding('sensor-silent', wheels, ['sensor', 'relearn', 'set-of-four'])],
    },
    sheet: sheetWith('235/60R18', 315, 'clamp-in'),
    prices,
    look: 'charged',
    opened: nothingOpened,
  })

const comeback = (change: Partial<JudgedComeback> = {}): JudgedComeback => ({
  cause: 'part-failed',
  came: { day: '2026-01-12', miles: 40_312 },
  terms: usualWarranty,
  works: [
    {
      ...{ orderNumber: 'T-2581', done: { day: '2025-12-31', miles: 40_000 } },
      ...{ wheels: ['LR'], sensors: ['LR'], relearned: true },
    },
  ],
  ...change,
})

const priced = (facts: JudgedComeback, ...wheels: WheelPosition[]) =>
  priceEstimate({
    bundles: offered(...wheels).map((bundle) => coverBundle(bundle, facts)),
    prices,
    revision: 1,
    readyAt: null,
  })

describe('an estimate on a comeback', () => {
  it('charges nothing for the sensor that failed, its work, its disposal, supplies and the inspection', () => {
    const { bundles, money } = priced(comeback(), 'LR')
    const [own] = bundles
    expect(own?.money.lines.map(({ lineKey, amountCents }) => [lineKey, amountCents])).toEqual([
      ['sensor', 0],
      ['wheel-service', 0],
      ['relearn', 0],
      ['sensor-disposal', 0],
      ['pressures', 0],
    ])
    expect(own?.money.lines.map(listCentsOf)).toEqual([6_800, 3_200, 3_900, 200, 0])
    expect(money.totals.totalCents).toBe(0)
  })

  it('takes one line apart where the terms cover one of its wheels only', () => {
    const [own] = priced(comeback(), 'LF', 'LR').bundles
    const at = (lineKey: string) => own?.money.lines.find((line) => line.lineKey === lineKey)
    expect([at('sensor.LF')?.amountCents, at('sensor.LR')?.amountCents]).toEqual([6_800, 0])
    expect(own?.covers?.find(({ lineKey }) => lineKey === 'sensor.LF')?.judged).toMatchObject({
      ...{ is: 'charged', why: 'another-wheel' },
    })
    expect(at('sensor')).toBeUndefined()
    // The relearn is needed for the covered sensor anyway.
    expect(at('relearn')?.amountCents).toBe(0)
  })

  it('follows a person who decides against the terms, in both directions, and keeps why', () => {
    const [own] = offered('LF', 'LR')
    if (!own) throw new RangeError('nothing is offered')
    const by = (lineKey: string, decided: 'covered' | 'charged') => ({
      ...{ bundleKey: own.bundleKey, lineKey, decided, why: 'As we agreed' },
    })
    const { lines, covers } = coverBundle(own, comeback(), [
      by('sensor.LF', 'covered'),
      by('sensor.LR', 'charged'),
      by('relearn', 'covered'),
    ])
    const at = (lineKey: string) => lines.find((line) => line.lineKey === lineKey)
    expect(at('sensor.LF')).toMatchObject({
      ...{ amountCents: 0, cover: { listCents: 6_800, why: 'As we agreed' } },
    })
    expect(at('sensor.LR')).toMatchObject({
      ...{ amountCents: 6_800, cover: { listCents: 6_800, why: 'As we agreed' } },
    })
    // Whoever decides what the terms say anyway decides nothing.
    expect(covers?.find(({ lineKey }) => lineKey === 'relearn')?.decided).toBeNull()
    expect(at('relearn')?.cover?.why).toBeNull()
  })

  it('says nothing of a job that the customer asks for', () => {
    const [own] = offered('LR')
    if (!own) throw new RangeError('nothing is offered')
    const asked = { ...own, bundleKey: 'asked.sensor' }
    expect(coverBundle(asked, comeback())).toBe(asked)
  })

  it('never costs more than without a warranty, and its totals are right, whatever the cause and the terms', () => {
    const wheels = fc.uniqueArray(fc.constantFrom<WheelPosition>(...roadPositions))
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.constantFrom<WheelPosition>(...roadPositions), { minLength: 1 }),
        fc.constantFrom(...ComebackCause.options),
        fc.array(fc.record({ wheels, sensors: wheels, relearned: fc.boolean() }), { maxLength: 2 }),
        fc.integer({ min: 0, max: 36 }),
        fc.option(fc.integer({ min: 40_000, max: 80_000 })),
        (silent, cause, works, months, miles) => {
          const facts = comeback({
            cause,
            terms: { laborMonths: months, sensorMonths: months * 2, sensorMiles: 24_000 },
            came: { day: '2026-06-12', miles },
            works: works.map((work) => ({
              ...{ orderNumber: 'T-2581', done: { day: '2025-12-31', miles: 40_000 } },
              ...work,
            })),
          })
          const covered = priced(facts, ...silent)
          const without = priceEstimate({
            ...{ bundles: offered(...silent), prices, revision: 1, readyAt: null },
          })
          expect(totalsAreRight(covered)).toBe(true)
          for (const [index, bundle] of covered.bundles.entries()) {
            const other = without.bundles[index]?.money
            expect(bundle.money.totals.totalCents).toBeLessThanOrEqual(other?.totals.totalCents ?? 0)
            // What it would cost is what it costs without a warranty; only fees that follow from what is charged differ.
            const list = (lines: NonNullable<typeof other>['lines']) =>
              lines
                .filter(({ kind, code }) => kind !== 'fee' || code === 'sensor-disposal')
                .reduce((sum, line) => sum + listCentsOf(line), 0)
            expect(list(bundle.money.lines)).toBe(list(other?.lines ?? []))
          }
        },
      ),
    )
  })
})
