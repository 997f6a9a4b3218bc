import { describe, expect, it } from 'vitest'
import { EstimateLine } from '../estimate.ts'
import { demoPrices as prices, sheetWith } from './demo-prices.test-support.ts'
import {
  disposalLine,
  feeLine,
  kitLine,
  laborLine,
  leakSearchLines,
  noChargeLine,
  punctureLines,
  sensorLine,
  wheelServiceLines,
} from './price-lines.ts'

const sheet = sheetWith('235/60R18', 315, 'clamp-in')

describe('a line of an estimate', () => {
  it.each([
    [
      'an hour of labor',
      laborLine(prices, 'relearn', 'relearn', 30),
      ['labor', 'labor', 'labor', 30, 13_000, 3_900],
    ],
    ['the look', laborLine(prices, 'look', 'look', 40), ['look', 'labor', 'labor', 40, 13_000, 5_200]],
    ['a sensor', sensorLine(prices, sheet, ['LF', 'RR']), ['part', 'sensor', 'parts', 200, 6_800, 13_600]],
    ['a clamp-in kit', kitLine(prices, 'clamp-in', ['LF']), ['kit', 'kit', 'parts', 100, 750, 750]],
    ['a snap-in stem', kitLine(prices, 'snap-in', ['LF']), ['kit', 'kit', 'parts', 100, 450, 450]],
    ['a plain stem', kitLine(prices, 'plain', ['LF', 'RF', 'SP']), ['kit', 'kit', 'parts', 300, 450, 1_350]],
    [
      'the disposal',
      disposalLine(prices, ['LF', 'RF', 'RR', 'LR']),
      ['fee', 'sensor-disposal', 'fee', 400, 200, 800],
    ],
    ['a fee', feeLine('supplies', 640), ['fee', 'supplies', 'fee', 100, 640, 640]],
    [
      'work for nothing',
      noChargeLine('pressures', 'pressures'),
      ['no-charge', 'no-charge', 'none', 100, 0, 0],
    ],
  ] as const)('for %s says what it is, how much of it, and for how many cents', (_, line, expected) => {
    const { kind, priceCode, taxClass, quantityHundredths, unitCents, amountCents } = line
    expect([kind, priceCode, taxClass, quantityHundredths, unitCents, amountCents]).toEqual(expected)
    expect(EstimateLine.safeParse(line).success).toBe(true)
  })

  it('is named by a code, says for which wheels it is, and holds no words of ours', () => {
    const lines = [
      laborLine(prices, 'relearn', 'program-and-relearn', 30),
      noChargeLine('pressures', 'pressures-alone'),
      kitLine(prices, 'clamp-in', ['LF', 'SP']),
      kitLine(prices, 'plain', ['RR']),
    ]
    expect(lines).toMatchObject([
      { lineKey: 'relearn', code: 'program-and-relearn', wheels: [] },
      { lineKey: 'pressures', code: 'pressures-alone', wheels: [] },
      { lineKey: 'kit', code: 'kit-clamp-in', wheels: ['LF', 'SP'] },
      { lineKey: 'kit', code: 'kit-rubber', wheels: ['RR'] },
    ])
    expect(lines.map(({ words }) => words)).toEqual([null, null, null, null])
  })
})

describe('a sensor', () => {
  it.each([
    ['snap-in', 433.92, 5_900],
    ['clamp-in', 433.92, 6_800],
    ['clamp-in', 1_999, 6_800],
    ['clamp-in', 2_000, 9_400],
    ['snap-in', 2_440, 9_400],
  ] as const)('%s at %d MHz costs %d cents', (stem, megahertz, cents) => {
    expect(sensorLine(prices, sheetWith('205/55R16', megahertz, stem), ['LF']).unitCents).toBe(cents)
  })

  it('says which frequency and stem it has', () => {
    expect(sensorLine(prices, sheet, ['RR'])).toMatchObject({
      code: 'sensor',
      wheels: ['RR'],
      sensor: { frequencyMHz: 315, stem: 'clamp-in' },
    })
  })

  it('that the sheet does not have is priced as the plainest one', () => {
    expect(sensorLine(prices, { ...sheet, sensor: null }, ['RR'])).toMatchObject({
      unitCents: 5_900,
      sensor: { frequencyMHz: 0, stem: 'snap-in' },
    })
  })
})

describe('a search for a leak', () => {
  it('is labor, and says that a hole is priced later', () => {
    expect(leakSearchLines(prices, 'LF')).toMatchObject([
      { code: 'leak-search', kind: 'labor', quantityHundredths: 100, amountCents: 3_800 },
      { code: 'repair-after-look', kind: 'no-charge', amountCents: 0 },
    ])
  })
})

describe('the repair of holes', () => {
  it.each([1, 2, 3])('is labor and a unit for each of %d', (holes) => {
    expect(punctureLines(prices, 'LF', holes)).toMatchObject([
      {
        lineKey: 'puncture-labor',
        kind: 'labor',
        taxClass: 'labor',
        quantityHundredths: 100 * holes,
        amountCents: 1_200 * holes,
      },
      {
        lineKey: 'repair-unit',
        kind: 'part',
        taxClass: 'parts',
        quantityHundredths: 100 * holes,
        amountCents: 600 * holes,
      },
    ])
  })
})

describe('demount, mount and balance', () => {
  const staggered = {
    ...sheet,
    tire: { ...sheet.tire, rear: { ...sheet.tire.rear, size: '275/35R19' } },
  }

  it('takes for each wheel the price of its own profile', () => {
    expect(wheelServiceLines(prices, staggered, ['LF', 'RR', 'LR'])).toMatchObject([
      {
        lineKey: 'wheel-service',
        kind: 'labor',
        taxClass: 'labor',
        quantityHundredths: 100,
        unitCents: 3_200,
      },
      { lineKey: 'wheel-service-low', kind: 'labor', quantityHundredths: 200, unitCents: 3_600 },
    ])
  })

  it('has no line for a profile that no wheel has', () => {
    expect(wheelServiceLines(prices, staggered, ['LF', 'RF']).map(({ lineKey }) => lineKey)).toEqual([
      'wheel-service',
    ])
    expect(wheelServiceLines(prices, staggered, ['LR']).map(({ lineKey }) => lineKey)).toEqual([
      'wheel-service-low',
    ])
    expect(wheelServiceLines(prices, staggered, [])).toEqual([])
  })

  it('takes a profile on the limit for low, and a wheel without a tire on the sheet for usual', () => {
    const service = (size: string) => wheelServiceLines(prices, sheetWith(size, 315, 'clamp-in'), ['LF'])
    expect(service('245/50R19')[0]?.lineKey).toBe('wheel-service-low')
    expect(service('245/55R19')[0]?.lineKey).toBe('wheel-service')
    expect(wheelServiceLines(prices, sheet, ['SP'])[0]?.lineKey).toBe('wheel-service')
  })
})
