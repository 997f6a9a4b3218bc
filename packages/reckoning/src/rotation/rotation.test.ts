import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { utilitySheet, withFullSizeSpare } from '../../test-support/utility-sheet.ts'
import { readTireSize } from '../tire/read-tire-size.ts'
import { readingOrder } from '../wheels.ts'
import { cameFrom, type Moves, movedPlaces, wentTo } from './moves.ts'
import { patternsAllowed } from './patterns-allowed.ts'
import { patternMoves, RotationPattern } from './rotation-pattern.ts'
import { type RotatingTire, rotationRefusals, type TiresByPlace } from './rotation-refusals.ts'
import { sizeBySheet } from './size-by-sheet.ts'

const patterns = RotationPattern.options
const fivePatterns = ['five-rearward-cross', 'five-forward-cross'] as const

/** Any permutation of the five places. */
const anyMoves = fc
  .shuffledSubarray([...readingOrder], { minLength: 5 })
  .map((from): Moves => Object.fromEntries(readingOrder.map((place, index) => [place, from[index]])))

const settings = { seed: 20260112 }

const tireSize = (text: string) => {
  const read = readTireSize(text)
  if (!read.ok) throw new Error(read.do)
  return read.value
}

const tire = (change: Partial<RotatingTire> = {}): RotatingTire => ({
  size: tireSize('235/60R18 103H'),
  directional: false,
  temporary: false,
  ...change,
})

const tires = (change: Partial<TiresByPlace> = {}): TiresByPlace => ({
  LF: tire(),
  RF: tire(),
  RR: tire(),
  LR: tire(),
  SP: tire(),
  ...change,
})

const everyTire = (change: Partial<RotatingTire>): TiresByPlace =>
  tires(Object.fromEntries(readingOrder.map((place) => [place, tire(change)])))

const faults = (pattern: RotationPattern, at: TiresByPlace): string[] =>
  rotationRefusals(patternMoves(pattern), at).map(({ fault, from, to }) => `${fault} ${from} to ${to}`)

describe('moves', () => {
  it('lose no wheel and double none', () => {
    fc.assert(
      fc.property(anyMoves, (moves) => {
        expect(readingOrder.map((place) => cameFrom(moves, place)).sort()).toEqual([...readingOrder].sort())
        for (const place of readingOrder) expect(cameFrom(moves, wentTo(moves, place))).toBe(place)
      }),
      settings,
    )
  })
})

describe('a pattern', () => {
  it.each(patterns)('%s moves each wheel to one place, and the spare only among five', (pattern) => {
    const moves = patternMoves(pattern)
    const moved = movedPlaces(moves)
    expect(moved.map((place) => cameFrom(moves, place)).sort()).toEqual([...moved].sort())
    expect(moved).toHaveLength(pattern.startsWith('five') ? 5 : 4)
  })

  it('forward cross undoes rearward cross', () => {
    for (const place of readingOrder)
      expect(cameFrom(patternMoves('forward-cross'), place)).toBe(
        wentTo(patternMoves('rearward-cross'), place),
      )
  })
})

describe('tires', () => {
  it('all alike may go by any pattern of four, and of five with a spare like them', () => {
    for (const pattern of patterns) expect(faults(pattern, tires())).toEqual([])
  })

  it('that roll one way only stay on their side and out of the trunk', () => {
    const directional = everyTire({ directional: true })
    expect(faults('front-to-back', directional)).toEqual([])
    expect(faults('cross', directional)).toEqual([
      'directional RR to LF',
      'directional LR to RF',
      'directional LF to RR',
      'directional RF to LR',
    ])
    expect(faults('side-to-side', directional)).toHaveLength(4)
    expect(faults('five-rearward-cross', directional)).toEqual([
      'directional SP to RR',
      'directional RF to LR',
      'directional LF to SP',
    ])
  })

  it('of two sizes stay on their axle', () => {
    const staggered = tires({
      RR: tire({ size: tireSize('275/35R18 103H') }),
      LR: tire({ size: tireSize('275/35R18 103H') }),
    })
    expect(faults('side-to-side', staggered)).toEqual([])
    expect(faults('front-to-back', staggered)).toEqual([
      'size-differs LR to LF',
      'size-differs RR to RF',
      'size-differs RF to RR',
      'size-differs LF to LR',
    ])
    expect(rotationRefusals(patternMoves('front-to-back'), staggered)[0]).toMatchObject({
      goes: tireSize('275/35R18 103H'),
      stood: staggered.LF?.size,
    })
  })

  it('that may carry less do not go where more is carried; the stronger may', () => {
    const weak = tires({ LF: tire({ size: tireSize('235/60R18 102H') }) })
    expect(faults('front-to-back', weak)).toEqual(['load-lower LF to LR'])
    const unmarked = tires({ LF: tire({ size: tireSize('235/60R18') }) })
    expect(faults('front-to-back', unmarked)).toEqual([])
    const extra = tires({ LF: tire({ size: tireSize('235/60R18 XL') }) })
    expect(faults('front-to-back', extra)).toEqual(['load-lower LR to LF', 'load-lower LF to LR'])
    const unlikeMarks = tires({
      LF: tire({ size: tireSize('235/60R18 103H XL') }),
      LR: tire({ size: tireSize('235/60R18 103H') }),
    })
    expect(faults('front-to-back', unlikeMarks)).toEqual([])
    const lightTruck = everyTire({ size: tireSize('LT265/70R17 E') })
    expect(faults('front-to-back', { ...lightTruck, LF: tire({ size: tireSize('LT265/70R17') }) })).toEqual(
      [],
    )
    expect(
      faults('front-to-back', { ...lightTruck, LF: tire({ size: tireSize('LT265/70R17 C') }) }),
    ).toContain('load-lower LF to LR')
  })

  it('for the way to the shop take no part', () => {
    const temporary = tires({ SP: tire({ temporary: true }) })
    for (const pattern of fivePatterns)
      expect(faults(pattern, temporary)).toEqual([
        expect.stringMatching(/^temporary-spare \w\w to \w\w$/),
        expect.stringMatching(/^temporary-spare \w\w to \w\w$/),
      ])
    expect(faults('rearward-cross', temporary)).toEqual([])
    expect(rotationRefusals(patternMoves('five-forward-cross'), temporary)[0]).toMatchObject({ place: 'SP' })
  })

  it('that are unknown must be found out, and a vehicle without a spare has no pattern of five', () => {
    const none = tires({ SP: null })
    expect(faults('five-rearward-cross', none)).toEqual([
      'size-not-known SP to RR',
      'size-not-known LF to SP',
    ])
    expect(faults('forward-cross', none)).toEqual([])
    expect(rotationRefusals(patternMoves('five-rearward-cross'), none)[0]).toMatchObject({ place: 'SP' })
    expect(rotationRefusals(patternMoves('cross'), tires({ LF: null }))[0]).toMatchObject({ place: 'LF' })
  })
})

describe('the patterns that are still allowed', () => {
  const fullSize = withFullSizeSpare(utilitySheet)

  it('for tires that roll one way only are front to back', () => {
    expect(patternsAllowed(utilitySheet, everyTire({ directional: true }))).toEqual(['front-to-back'])
  })

  it('are all where nothing speaks against any, those of five only with a spare that is known', () => {
    expect(patternsAllowed(fullSize, tires())).toEqual(patterns)
    expect(patternsAllowed(fullSize, tires({ SP: null }))).toEqual(
      patterns.filter((pattern) => !pattern.startsWith('five')),
    )
  })

  it('are none where a tire of another size is at one place alone', () => {
    expect(patternsAllowed(utilitySheet, tires({ LF: tire({ size: tireSize('225/60R18 100H') }) }))).toEqual(
      [],
    )
  })
})

it('the size of a sheet has the load mark of its class', () => {
  const bySheet = (size: string, loadClass: 'LT-E' | 'XL' | 'SL') =>
    sizeBySheet({ size, loadClass, sidewallMaximumPsi: 80 })
  expect(bySheet('LT265/70R17', 'LT-E')?.loadMark).toBe('E')
  expect(bySheet('245/45R18 100V', 'XL')?.loadMark).toBe('XL')
  expect(bySheet('235/60R18', 'SL')?.loadMark).toBeNull()
  expect(bySheet('as on the label', 'SL')).toBeNull()
})
