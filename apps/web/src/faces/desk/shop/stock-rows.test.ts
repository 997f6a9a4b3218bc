import { StockContent, type StockItem } from '@bayledger/contract/stock'
import { describe, expect, it } from 'vitest'
import { recordFaultsOf } from '../../../ui/record/record-rows.ts'
import { changeOf, moveRows } from './stock-move-rows.ts'
import { stockContent, stockLine, stockNeeds, stockRows, stockValues } from './stock-rows.ts'

const here = '019bb301-0000-7000-8000-000000000001'
const places = [{ value: here, label: 'Tamber Street' }]
const rows = stockRows(places)
const content: StockContent = {
  partNumber: 'TS-DUAL-C',
  locationId: here,
  kind: 'sensor',
  words: 'Sensor 315 or 433.92 MHz',
  frequenciesMHz: [315, 433.92],
  stem: 'clamp-in',
  holeMillimeters: 11.3,
  protocols: ['P-315', 'P-433'],
  ratedPsi: 87,
  nutLbfIn: 62,
  screwLbfIn: 12.5,
  madeMonth: '2025-08',
  shelfMonths: 12,
  heldBack: null,
  minimum: 4,
  leadDays: 2,
  coreDepositCents: 550,
  supplier: null,
}
const facts: StockItem['facts'] = {
  onHand: 3,
  onTheWay: 0,
  coresOwed: 0,
  drawnIn90Days: 0,
  suggestedMinimum: 0,
  lots: [],
  promised: [{ orderId: here, orderNumber: 'T-2607', promisedAt: '2026-01-14T15:00:00.000Z' }],
}
const item = (change: Partial<StockContent> = {}, other: Partial<StockItem['facts']> = {}): StockItem => ({
  id: here,
  version: 1,
  content: { ...content, ...change },
  facts: { ...facts, ...other },
})

describe('a line of the stock list as rows', () => {
  it('comes back as it was, and is what the server takes', () => {
    const values = stockValues(content)
    expect(recordFaultsOf(rows(values), values)).toEqual({})
    expect(stockContent(values)).toEqual(content)
    expect(StockContent.safeParse(content).success).toBe(true)
  })

  it('of a kit has nothing of a sensor', () => {
    const values = { ...stockValues(content), kind: 'kit' }
    expect(rows(values).map(({ key }) => key)).not.toContain('nutLbfIn')
    expect(stockContent(values)).toMatchObject({
      kind: 'kit',
      frequenciesMHz: [],
      protocols: [],
      nutLbfIn: null,
    })
  })

  it.each([
    ['nutLbfIn', '1200', '1200 lbf·in cannot be: allowed is 1 to 200 lbf·in. Read it again.'],
    ['frequenciesMHz', '315, 433.92, 2400', 'One frequency, or two with a comma.'],
    ['frequenciesMHz', '433,92 MHz', 'One frequency, or two with a comma.'],
    ['coreDepositCents', '-1', '-1 $ cannot be: allowed is 0 to 100000 $. Read it again.'],
  ])('says at the row %s what is wrong with "%s"', (key, value, fault) => {
    const values = { ...stockValues(content), [key]: value }
    expect(recordFaultsOf(rows(values), values)).toEqual({ [key]: fault })
  })
})

describe('what a part needs', () => {
  it.each([
    [item(), ['under the 4 to keep']],
    [item({ minimum: 3 }), []],
    [item({ minimum: null }, { onHand: -1 }), ['drawn and never received: count it']],
    [item({}, { onTheWay: 1, coresOwed: 1 }), ['1 old part to give back']],
    [item({ minimum: null, madeMonth: '2024-12' }), ['past its shelf limit']],
    [item({ minimum: null, madeMonth: '2024-12', shelfMonths: null }), []],
    [item({ minimum: null, madeMonth: '2022-12' }), ['over 36 months old: quarantine']],
    [item({ minimum: null, madeMonth: '2022-12' }, { onHand: 0 }), []],
  ])('is said in few words (%#)', (one, needs) => {
    expect(stockNeeds(one, '2026-01-12')).toEqual(needs)
  })

  it('stands in its line, after how many there are and whom they are promised to', () => {
    expect(stockLine(item(), '2026-01-12')).toBe(
      'Sensor 315 or 433.92 MHz · 3 on hand · promised to T-2607 · under the 4 to keep',
    )
  })
})

describe('a movement', () => {
  it.each([
    [
      { move: 'received', quantity: '10', lot: 'K7714 ', cores: '2' },
      { kind: 'received', quantity: 10, lot: 'K7714', cores: 2, words: null },
    ],
    [
      { move: 'counted', quantity: '0' },
      { kind: 'counted', found: 0, listed: 3, words: null },
    ],
    [
      { move: 'scrapped', quantity: '1', words: 'Crushed' },
      { kind: 'scrapped', quantity: 1, lot: null, words: 'Crushed' },
    ],
    [
      { move: 'sent', quantity: '2', toLocationId: here },
      { kind: 'sent', quantity: 2, lot: null, toLocationId: here },
    ],
    [
      { move: 'core-returned', quantity: '2' },
      { kind: 'core-returned', cores: 2, words: null },
    ],
  ])('%o is sent as %o', (values, sent) => {
    expect(recordFaultsOf(moveRows(values, places, 2), values)).toEqual({})
    expect(changeOf(values, 3)).toEqual(sent)
  })

  it('of none, or of parts that are scrapped for no reason, is not sent', () => {
    const values = { move: 'scrapped', quantity: '0' }
    expect(Object.keys(recordFaultsOf(moveRows(values, places, 0), values))).toEqual(['quantity', 'words'])
  })
})
