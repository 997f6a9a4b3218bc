import { blankOrder, type OrderState } from '@bayledger/ledger/state'
import { estimatePayload } from '@bayledger/ledger/subjects/consent/estimate-payload'
import { firstPrices as prices } from '@bayledger/reckoning/money/first-prices'
import { type HandLine, handBundle } from '@bayledger/reckoning/money/hand-bundles'
import type { PriceList } from '@bayledger/reckoning/money/price-list'
import { describe, expect, it } from 'vitest'
import { type EstimateDraft, estimateOf, keptBundles, newestPriced, startDraft } from './estimate-draft.ts'

const line: HandLine = {
  bundleKey: 'hand.weld',
  kind: 'outside',
  words: 'Weld the bracket',
  itemKey: null,
  quantityHundredths: 100,
  unitCents: 8_000,
  wheels: [],
  depositCents: null,
  oldPartIsHere: false,
}
const weld = handBundle(line)
const straighten = handBundle({
  ...line,
  bundleKey: 'hand.straighten',
  words: 'Straighten',
  unitCents: 12_500,
})
const loyal = { key: 'loyal', words: 'Loyal', percentThousandths: 10_000, capCents: null }
const blank: EstimateDraft = startDraft(null, [])

/** An order of which the newest version is this draft, with the money of it. */
const issued = (draft: EstimateDraft, list: PriceList = prices) => {
  const state = blankOrder('shop', 'order')
  const sides = new Map<string, string>()
  const estimate = estimateOf(
    { state, sides, offered: [], prices: list, discounts: [loyal], before: null, comeback: null, timeZone },
    draft,
  )
  const { scope } = estimatePayload(estimate, 'diagnosis', (content) => {
    const digest = `side-${sides.size}`
    sides.set(digest, JSON.stringify(content))
    return digest
  })
  const newest = { scope } as unknown as OrderState['estimates'][number]
  return { state: { ...state, estimates: [newest] }, sides }
}
const next = (
  { state, sides }: ReturnType<typeof issued>,
  change: Partial<EstimateDraft> = {},
  list: PriceList = prices,
) => {
  const before = newestPriced(state, sides)
  const draft = { ...startDraft(before, [loyal]), ...change }
  return estimateOf(
    { state, sides, offered: [], prices: list, discounts: [loyal], before, comeback: null, timeZone },
    draft,
  )
}
// Offset of Pacific/Auckland in January: IANA time zone database. No machine that runs this is likely to be set to it.
const timeZone = 'Pacific/Auckland'
const dearer = { ...prices, supplies: { percentThousandths: 20_000, capCents: 9_900 } }

describe('the next version of an estimate', () => {
  it('keeps what was added, its price, its discounts and the exemption', () => {
    const off = { bundleKey: 'hand.weld', lineKey: 'item', reason: 'Scratched', cents: 1_000 }
    const draft = { ...blank, added: [weld], lineDiscounts: [off], discount: 'loyal', exemption: 'EX-1' }
    const order = issued(draft)
    const before = newestPriced(order.state, order.sides)
    const again = next(order, {}, dearer)
    expect(again.revision).toBe(2)
    expect(again.bundles).toEqual(before?.bundles)
    expect(again.money.exemption).toBe('EX-1')
  })

  it('is ready by the shop’s clock, on the day that was chosen', () => {
    const order = issued({ ...blank, added: [weld] })
    expect(next(order, { readyAt: '15:30', readyOn: '2030-01-12' }).readyAt).toBe('2030-01-12T02:30:00.000Z')
    expect(next(order, { readyAt: '15:30', readyOn: '' }).readyAt).toBeNull()
    expect(next(order).readyAt).toBeNull()
  })

  it('prices anew what is changed, without doubling what pricing adds', () => {
    const order = issued({ ...blank, added: [weld] })
    const [changed] = next(order, {
      lineDiscounts: [{ bundleKey: 'hand.weld', lineKey: 'item', reason: 'Late', cents: 500 }],
    }).bundles
    expect(changed?.money.lines.map(({ lineKey }) => lineKey)).toEqual([
      'item',
      'supplies',
      'discount.line.item',
    ])
    const [dear] = next(order, { discount: 'loyal' }, dearer).bundles
    expect(dear?.money.lines.map(({ lineKey, amountCents }) => [lineKey, amountCents])).toEqual([
      ['item', 8_000],
      ['supplies', 1_600],
      ['discount.loyal.labor', -800],
    ])
  })

  it('leaves out what is taken out, and lets stand by itself what was in its place', () => {
    const added = [weld, { ...straighten, alternativeTo: 'hand.weld' }]
    expect(keptBundles([], { ...blank, added }).map(({ alternativeTo }) => alternativeTo)).toEqual([
      null,
      'hand.weld',
    ])
    expect(keptBundles([], { ...blank, added: added.slice(1) })[0]?.alternativeTo).toBeNull()
    expect(next(issued({ ...blank, added }), { added: [weld] }).bundles).toHaveLength(1)
  })
})
