import { describe, expect, it } from 'vitest'
import { EstimateLine } from '../estimate.ts'
import { demoPrices as prices, sheetWith } from './demo-prices.test-support.ts'
import {
  disposalLine,
  feeLine,
  kitLine,
  laborLine,
  noChargeLine,
  repairLines,
  sensorLine,
  wheelServiceLines,
} from './price-lines.ts'

const sheet = sheetWith('235/60R18', 315, 'clamp-in')

describe('a line of an estimate', () => {
  it.each([
    [
      'an hour of labor',
      laborLine(prices, 'relearn', 'Relearn', 30),
      ['labor', 'labor', 'labor', 30, 13_000, 3_900],
    ],
    ['the look', laborLine(prices, 'look', 'Check', 40), ['look', 'labor', 'labor', 40, 13_000, 5_200]],
    ['a sensor', sensorLine(prices, sheet, 2), ['part', 'sensor', 'parts', 200, 6_800, 13_600]],
    ['a clamp-in kit', kitLine(prices, 'clamp-in', 1), ['kit', 'kit', 'parts', 100, 750, 750]],
    ['a snap-in stem', kitLine(prices, 'snap-in', 1), ['kit', 'kit', 'parts', 100, 450, 450]],
    ['a plain stem', kitLine(prices, 'plain', 3), ['kit', 'kit', 'parts', 300, 450, 1_350]],
    ['the disposal', disposalLine(prices, 4), ['fee', 'sensor-disposal', 'fee', 400, 200, 800]],
    ['a fee', feeLine('supplies', 'Shop supplies', 640), ['fee', 'supplies', 'fee', 100, 640, 640]],
    [
      'work for nothing',
      noChargeLine('pressures', 'Pressures'),
      ['no-charge', 'no-charge', 'none', 100, 0, 0],
    ],
  ] as const)('for %s says what it is, how much of it, and for how many cents', (_, line, expected) => {
    const { kind, priceCode, taxClass, quantityHundredths, unitCents, amountCents } = line
    expect([kind, priceCode, taxClass, quantityHundredths, unitCents, amountCents]).toEqual(expected)
    expect(EstimateLine.safeParse(line).success).toBe(true)
  })

  it('keeps the key and the words that it was given', () => {
    expect(laborLine(prices, 'relearn', 'Relearn', 30)).toMatchObject({
      lineKey: 'relearn',
      words: 'Relearn',
    })
    expect(noChargeLine('pressures', 'Pressures')).toMatchObject({ lineKey: 'pressures', words: 'Pressures' })
    expect(feeLine('supplies', 'Shop supplies', 1)).toMatchObject({
      lineKey: 'supplies',
      words: 'Shop supplies',
    })
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
    expect(sensorLine(prices, sheetWith('205/55R16', megahertz, stem), 1).unitCents).toBe(cents)
  })

  it('is named with its frequency and stem', () => {
    expect(sensorLine(prices, sheet, 1).words).toBe('Wheel sensor, 315 MHz, clamp-in, with its stem parts')
  })

  it('that the sheet does not have is priced as the plainest one', () => {
    expect(sensorLine(prices, { ...sheet, sensor: null }, 1)).toMatchObject({
      unitCents: 5_900,
      words: 'Wheel sensor, 0 MHz, snap-in, with its stem parts',
    })
  })
})

describe('a kit', () => {
  it('is named for its valve', () => {
    expect(kitLine(prices, 'clamp-in', 1).words).toBe('Stem service kit, clamp-in')
    expect(kitLine(prices, 'plain', 1).words).toBe('Rubber stem and core')
  })
})

describe('a repair', () => {
  it('is labor and one unit', () => {
    expect(repairLines(prices)).toMatchObject([
      {
        lineKey: 'repair-labor',
        kind: 'labor',
        taxClass: 'labor',
        quantityHundredths: 100,
        amountCents: 3_800,
      },
      { lineKey: 'repair-unit', kind: 'part', taxClass: 'parts', quantityHundredths: 100, amountCents: 600 },
    ])
  })
})

describe('demount, mount and balance', () => {
  const staggered = {
    ...sheet,
    tire: { ...sheet.tire, rear: { ...sheet.tire.rear, size: '275/35R19' } },
  }

  it('asks for each wheel the price of its own profile', () => {
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
