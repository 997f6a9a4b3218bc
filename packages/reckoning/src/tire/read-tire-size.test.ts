import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readTireSize } from './read-tire-size.ts'
import { type TireSize, tireSizeText } from './tire-size.ts'

const textOf = (typed: string): string | null => {
  const read = readTireSize(typed)
  return read.ok ? tireSizeText(read.value) : null
}

const bare = { prefix: null, suffix: null, zr: false, construction: 'R', loadMark: null, service: null }

describe('a tire size', () => {
  it('is read with all its parts', () => {
    expect(readTireSize('LT235/85R16 120/116R E')).toEqual({
      ok: true,
      value: {
        ...bare,
        kind: 'metric',
        prefix: 'LT',
        width: 235,
        aspectPercent: 85,
        rimInches: 16,
        loadMark: 'E',
        service: { loadIndex: 120, dualLoadIndex: 116, speed: 'R' },
      },
    })
    expect(readTireSize('33x12.50R15LT 108Q C')).toEqual({
      ok: true,
      value: {
        kind: 'flotation',
        construction: 'R',
        diameterInches: 33,
        widthInches: 12.5,
        rimInches: 15,
        loadMark: 'C',
        service: { loadIndex: 108, dualLoadIndex: null, speed: 'Q' },
      },
    })
  })

  it.each([
    ['205/55R16', '205/55R16'],
    ['  205 / 55 r 16  91 v ', '205/55R16 91V'],
    ['205/55R1691V', '205/55R16 91V'],
    ['P215/65R15XL 95H', 'P215/65R15 95H XL'],
    ['P215/65R15 95H SL', 'P215/65R15 95H SL'],
    ['225/45R17 LL', '225/45R17 LL'],
    ['275/40ZR19', '275/40ZR19'],
    ['275/40ZR19 101W', '275/40ZR19 101W'],
    ['275/40zr19 (101y) xl', '275/40ZR19 (101Y) XL'],
    ['LT245/75R16/E', 'LT245/75R16 E'],
    ['235/65R16C', '235/65R16C'],
    ['235/65R16C 121/119R E', '235/65R16C 121/119R E'],
    ['235/85R16LT D', '235/85R16LT D'],
    ['ST205/75D15 C', 'ST205/75D15 C'],
    ['T125/70D17', 'T125/70D17'],
    ['185/78B14', '185/78B14'],
    ['185/82R14', '185/82R14'],
    ['225/70R19.5 128/126N', '225/70R19.5 128/126N'],
    ['31x10.5R15 LT', '31x10.5R15LT'],
    ['31×10,50R15LT', '31x10.5R15LT'],
    ['105/20R10', '105/20R10'],
    ['395/100R30', '395/100R30'],
    ['22x7R10LT', '22x7R10LT'],
    ['46x18R30LT', '46x18R30LT'],
    ['205/55R16 20A1', '205/55R16 20A1'],
    ['205/55R16 279/279A8', '205/55R16 279/279A8'],
    ['HL275/35R21', 'HL275/35R21'],
    ['HL 275/35 R21 103Y', 'HL275/35R21 103Y'],
    ['185R14C', '185R14C'],
    ['185 R 14 C 102/100Q', '185R14C 102/100Q'],
    ['155R13', '155R13'],
    ['7.50R16LT', '7.50R16LT'],
    ['7,50R16LT 122/118N E', '7.50R16LT 122/118N E'],
    ['6.50R16C', '6.50R16C'],
    ['225/45R17 91W RFT', '225/45R17 91W RFT'],
    ['245/40R19 98Y XL RFT', '245/40R19 98Y XL RFT'],
    ['225/45R17RFT', '225/45R17 RFT'],
  ])('"%s" is written %s', (typed, text) => {
    expect(textOf(typed)).toBe(text)
  })

  it.each([
    ['', 'not-a-size'],
    ['205', 'not-a-size'],
    ['205/55-16', 'not-a-size'],
    ['205/55C16', 'not-a-size'],
    ['7.50R16', 'not-a-size'],
    ['QLT235/85R16', 'not-a-size'],
    ['LT31x10.5R15LT', 'not-a-size'],
    ['200/55R16', 'width'],
    ['206/55R16', 'width'],
    ['095/55R16', 'width'],
    ['405/55R16', 'width'],
    ['205/15R16', 'aspect'],
    ['205/56R16', 'aspect'],
    ['205/105R16', 'aspect'],
    ['205/55R09', 'rim'],
    ['205/55R31', 'rim'],
    ['205/55R16.3', 'rim'],
    ['205/55R16 91V M+S', 'after-the-rim'],
    ['205/55R16 91', 'after-the-rim'],
    ['P205/55R16LT', 'after-the-rim'],
    ['LT205/75R16LT', 'after-the-rim'],
    ['33x12.50R15', 'after-the-rim'],
    ['33x12.50R15C', 'after-the-rim'],
    ['P205/55R16 C', 'load-mark'],
    ['205/55R16 91V E', 'load-mark'],
    ['T125/70D17 D', 'load-mark'],
    ['LT235/85R16 XL', 'load-mark'],
    ['205/75R16C XL', 'load-mark'],
    ['ST205/75R15 SL', 'load-mark'],
    ['205/55R16 XL 91V XL', 'load-mark'],
    ['205/55R16 19V', 'load-index'],
    ['205/55R16 280V', 'load-index'],
    ['LT235/85R16 116/120R', 'load-index'],
    ['LT235/85R16 116/19R', 'load-index'],
    ['205/55R16 91I', 'speed-symbol'],
    ['205/55R16 91A', 'speed-symbol'],
    ['205/55R16 91V8', 'speed-symbol'],
    ['205/55R16 (91W)', 'speed-symbol'],
    ['205/55R16 (91Y', 'speed-symbol'],
    ['205/55R16 91Y)', 'speed-symbol'],
    ['275/40ZR19 101V', 'speed-symbol'],
    ['275/40ZR19 101H', 'speed-symbol'],
    ['21x10R15LT', 'diameter'],
    ['47x10R15LT', 'diameter'],
    ['26x10R26LT', 'diameter'],
    ['31x6.5R15LT', 'width'],
    ['31x18.5R15LT', 'width'],
    ['31x10.5R9.5LT', 'not-a-size'],
    ['31x10.5R09LT', 'rim'],
    ['HL275/35R21 103Y XL', 'load-mark'],
    ['180R14C', 'width'],
    ['185R9C', 'not-a-size'],
    ['185R31C', 'rim'],
    ['3.50R16LT', 'width'],
    ['7.50R16LT XL', 'load-mark'],
    ['225/45R17 RFT RFT', 'after-the-rim'],
  ])('"%s" is refused for its %s, in words', (typed, fault) => {
    const read = readTireSize(typed)
    expect(read).toMatchObject({ ok: false, fault })
    if (read.ok) return
    expect(read.found.startsWith(typed.slice(0, 30))).toBe(true)
    expect(read.allowed).toMatch(/\w/)
    expect(read.do).toMatch(/\.$/)
  })

  it('is refused with the part that is wrong, and what is allowed there', () => {
    expect(readTireSize('206/55R16')).toEqual({
      ok: false,
      fault: 'width',
      found: '206/55R16: width 206',
      allowed: 'a width of 105 to 395 mm that ends in 5',
      do: 'Read it off the sidewall or the label again.',
    })
    expect(readTireSize('275/40ZR19 101H')).toMatchObject({ found: '275/40ZR19 101H: ZR with H' })
    expect(readTireSize('LT235/85R16 XL')).toMatchObject({
      found: 'LT235/85R16 XL: XL',
      allowed: 'B, C, D, E, F, G, H, J, L, M, N with this kind of size',
    })
    expect(readTireSize('HL275/35R21 103Y XL')).toMatchObject({
      allowed: 'no load mark with this kind of size',
    })
    expect(readTireSize('P205/55R16 C')).toMatchObject({ allowed: 'SL, XL, LL with this kind of size' })
    expect(readTireSize('LT235/85R16 116/120R')).toMatchObject({
      found: 'LT235/85R16 116/120R: 116/120',
    })
    expect(readTireSize('205/55R16 19V')).toMatchObject({ found: '205/55R16 19V: 19' })
    expect(readTireSize('205/55R16 (91W)')).toMatchObject({ found: '205/55R16 (91W): (W)' })
    expect(readTireSize('205/55R16 91I')).toMatchObject({ found: '205/55R16 91I: I' })
    expect(readTireSize('205/55R16 XL 91V XL')).toMatchObject({
      found: '205/55R16 XL 91V XL: XL and XL',
    })
  })
})

const speed = fc.constantFrom('A1', 'A8', 'B', 'H', 'Q', 'V', 'W', 'Y', '(Y)' as const)
const service = fc.option(
  fc
    .record({ loadIndex: fc.integer({ min: 20, max: 279 }), less: fc.option(fc.nat(20)), speed })
    .map(({ loadIndex, less, speed }) => ({
      loadIndex,
      dualLoadIndex: less === null ? null : Math.max(20, loadIndex - less),
      speed,
    })),
)
const fives = (from: number, to: number) =>
  fc.integer({ min: from / 5, max: to / 5 }).map((fifths) => fifths * 5)
const construction = fc.constantFrom('R', 'D', 'B')
const rimInches = fc.integer({ min: 20, max: 42 }).map((halves) => halves / 2)
const letters = fc.constantFrom('C', 'D', 'E', 'N', null)
const metric = fc
  .record({
    kind: fc.constant('metric'),
    kindOf: fc.oneof(
      fc.record({
        prefix: fc.constantFrom('P', 'T', null),
        suffix: fc.constant(null),
        loadMark: fc.constantFrom('SL', 'XL', 'LL', null),
      }),
      fc.record({ prefix: fc.constant('HL'), suffix: fc.constant(null), loadMark: fc.constant(null) }),
      fc.record({ prefix: fc.constantFrom('LT', 'ST'), suffix: fc.constant(null), loadMark: letters }),
      fc.record({ prefix: fc.constant(null), suffix: fc.constantFrom('C', 'LT'), loadMark: letters }),
    ),
    width: fc.integer({ min: 10, max: 39 }).map((tens) => tens * 10 + 5),
    aspectPercent: fives(20, 100),
    construction,
    rimInches,
    service,
    zr: fc.boolean(),
  })
  .map(({ kindOf, ...size }) => ({
    ...size,
    ...kindOf,
    zr: size.zr && (size.service === null || ['W', 'Y', '(Y)'].includes(size.service.speed)),
  }))
const flotation = fc.record({
  kind: fc.constant('flotation'),
  diameterInches: fc.integer({ min: 88, max: 184 }).map((quarters) => quarters / 4),
  widthInches: fc.integer({ min: 28, max: 72 }).map((quarters) => quarters / 4),
  construction,
  rimInches,
  loadMark: letters,
  service,
})

const heightless = fc.record({
  kind: fc.constant('heightless'),
  width: fc.oneof(
    fc.record({
      value: fc.integer({ min: 10, max: 39 }).map((tens) => tens * 10 + 5),
      unit: fc.constant('mm'),
    }),
    fc.record({
      value: fc.integer({ min: 18, max: 52 }).map((quarters) => quarters / 4),
      unit: fc.constant('in'),
    }),
  ),
  suffix: fc.constantFrom('C', 'LT'),
  construction,
  rimInches,
  loadMark: letters,
  service,
})
const runFlat = fc.constantFrom({}, { runFlat: true as const })
const anySize = fc
  .tuple(fc.oneof(metric, flotation, heightless), runFlat)
  .map(([size, mark]) => ({ ...size, ...mark }))

describe('any size', () => {
  it('is read again from its own text as the same size', () => {
    fc.assert(
      fc.property(anySize, (size) => {
        expect(readTireSize(tireSizeText(size as TireSize))).toEqual({ ok: true, value: size })
      }),
      { seed: 20260112, numRuns: 3_000 },
    )
  })

  const nearly = fc
    .array(
      fc.constantFrom(
        ...[
          'P',
          'LT',
          'T',
          'ST',
          '205',
          '235',
          '31',
          'x',
          '10.5',
          '/',
          '55',
          '85',
          'Z',
          'R',
          'D',
          '16',
          '15',
        ],
        ...[' ', 'C', 'LT', 'XL', 'E', '91', '116', '/', 'V', 'H', 'Y', '(', ')', 'A1', '.', ',', '-', '0'],
      ),
      { maxLength: 14 },
    )
    .map((parts) => parts.join(''))
  const changed = fc.tuple(anySize, fc.nat(24), fc.string({ maxLength: 1 })).map(([size, at, sign]) => {
    const text = tireSizeText(size as TireSize)
    return text.slice(0, at) + sign + text.slice(at + 1)
  })

  it('is taken whole or refused: nothing is thrown or guessed in 10,000 texts', () => {
    let taken = 0
    fc.assert(
      fc.property(fc.oneof(fc.string(), nearly, changed), (typed) => {
        const read = readTireSize(typed)
        if (!read.ok) {
          expect(read.allowed.length * read.do.length).toBeGreaterThan(0)
          return
        }
        taken += 1
        expect(readTireSize(tireSizeText(read.value))).toEqual(read)
        const dimensions = tireSizeText(read.value).replace(/[ /(].*$/, '')
        expect(typed.toUpperCase().replace(/[\s,]/g, '').length).toBeGreaterThanOrEqual(dimensions.length - 2)
      }),
      { seed: 20260112, numRuns: 10_000 },
    )
    expect(taken).toBeGreaterThan(500)
  })
})
