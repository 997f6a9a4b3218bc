import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { utilitySheet } from '../../test-support/utility-sheet.ts'
import { readTireSize } from '../tire/read-tire-size.ts'
import { readingOrder, type WheelPosition } from '../wheels.ts'
import { cameFrom, carried, composed, inverse, type Moves, movedPlaces, wentTo } from './moves.ts'
import { expectedIds, planRotation } from './plan-rotation.ts'
import type { RotatingWheel } from './rotating-wheel.ts'
import { patternMoves, RotationPattern } from './rotation-pattern.ts'
import { rotationRefusals, type WheelsByPlace } from './rotation-refusals.ts'

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

const tire = (place: WheelPosition, change: Partial<RotatingWheel['tire']> = {}): RotatingWheel => ({
  sensorId: `1A2B3C1${readingOrder.indexOf(place)}`,
  tire: {
    size: tireSize('235/60R18 103H'),
    directional: false,
    temporary: false,
    tin: `1A42BCDEF2${readingOrder.indexOf(place)}20`,
    treadDepth32nds: 5 + readingOrder.indexOf(place),
    ...change,
  },
  notes: [`came at ${place}`],
})

const wheels = (change: Partial<WheelsByPlace> = {}): WheelsByPlace => ({
  LF: tire('LF'),
  RF: tire('RF'),
  RR: tire('RR'),
  LR: tire('LR'),
  SP: tire('SP'),
  ...change,
})

const everyWheel = (change: Partial<RotatingWheel['tire']>): WheelsByPlace =>
  wheels(Object.fromEntries(readingOrder.map((place) => [place, tire(place, change)])))

const faults = (pattern: RotationPattern, at: WheelsByPlace): string[] =>
  rotationRefusals(patternMoves(pattern), at).map(({ fault, from, to }) => `${fault} ${from} to ${to}`)

describe('moves', () => {
  it('with their inverse leave every wheel where it was', () => {
    fc.assert(
      fc.property(anyMoves, (moves) => {
        expect(composed(moves, inverse(moves))).toEqual({})
        expect(composed(inverse(moves), moves)).toEqual({})
        expect(movedPlaces(composed(moves, {}))).toEqual(movedPlaces(moves))
      }),
      settings,
    )
  })

  it('after one another carry as they do one by one', () => {
    fc.assert(
      fc.property(anyMoves, anyMoves, (first, second) => {
        const places = { LF: 'LF', RF: 'RF', RR: 'RR', LR: 'LR', SP: 'SP' } as const
        const stepwise = carried<WheelPosition>(second, carried<WheelPosition>(first, places))
        expect(carried<WheelPosition>(composed(first, second), places)).toEqual(stepwise)
      }),
      settings,
    )
  })

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
    expect(composed(patternMoves('rearward-cross'), patternMoves('forward-cross'))).toEqual({})
  })
})

describe('tires', () => {
  it('all alike may go by any pattern of four, and of five with a spare like them', () => {
    for (const pattern of patterns) expect(faults(pattern, wheels())).toEqual([])
  })

  it('that roll one way only stay on their side and out of the trunk', () => {
    const directional = everyWheel({ directional: true })
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
    const staggered = wheels({
      RR: tire('RR', { size: tireSize('275/35R18 103H') }),
      LR: tire('LR', { size: tireSize('275/35R18 103H') }),
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
      stood: staggered.LF?.tire.size,
    })
  })

  it('that may carry less do not go where more is carried; the stronger may', () => {
    const weak = wheels({ LF: tire('LF', { size: tireSize('235/60R18 102H') }) })
    expect(faults('front-to-back', weak)).toEqual(['load-lower LF to LR'])
    const unmarked = wheels({ LF: tire('LF', { size: tireSize('235/60R18') }) })
    expect(faults('front-to-back', unmarked)).toEqual([])
    const extra = wheels({ LF: tire('LF', { size: tireSize('235/60R18 XL') }) })
    expect(faults('front-to-back', extra)).toEqual(['load-lower LR to LF', 'load-lower LF to LR'])
    const unlikeMarks = wheels({
      LF: tire('LF', { size: tireSize('235/60R18 103H XL') }),
      LR: tire('LR', { size: tireSize('235/60R18 103H') }),
    })
    expect(faults('front-to-back', unlikeMarks)).toEqual([])
  })

  it('for the way to the shop take no part', () => {
    const temporary = wheels({ SP: tire('SP', { temporary: true }) })
    for (const pattern of fivePatterns)
      expect(faults(pattern, temporary)).toEqual([
        expect.stringMatching(/^temporary-spare \w\w to \w\w$/),
        expect.stringMatching(/^temporary-spare \w\w to \w\w$/),
      ])
    expect(faults('rearward-cross', temporary)).toEqual([])
    expect(rotationRefusals(patternMoves('five-forward-cross'), temporary)[0]).toMatchObject({ place: 'SP' })
  })

  it('that are unknown must be found out, and a vehicle without a spare has no pattern of five', () => {
    const none = wheels({ SP: null })
    expect(faults('five-rearward-cross', none)).toEqual([
      'wheel-not-known SP to RR',
      'wheel-not-known LF to SP',
    ])
    expect(faults('forward-cross', none)).toEqual([])
    expect(rotationRefusals(patternMoves('five-rearward-cross'), none)[0]).toMatchObject({ place: 'SP' })
    expect(rotationRefusals(patternMoves('cross'), wheels({ LF: null }))[0]).toMatchObject({ place: 'LF' })
  })
})

describe('a rotation', () => {
  it('carries sensor, tire and notes with each wheel, and says what the vehicle must then hold', () => {
    const plan = planRotation('rearward-cross', utilitySheet, wheels())
    if (!plan.ok) throw new Error('refused')
    expect(plan.wheels.LF).toEqual(tire('LR'))
    expect(plan.wheels.LR).toEqual(tire('RF'))
    expect(plan.wheels.SP).toEqual(tire('SP'))
    expect(plan.storedIds).toEqual({ LF: '1A2B3C13', RF: '1A2B3C12', RR: '1A2B3C10', LR: '1A2B3C11' })
    expect(plan.after.map(({ does }) => does)).toEqual(['torque', 'set-pressures', 'relearn'])
    expect(plan.after[0]).toEqual({ does: 'torque', wheels: ['LF', 'RF', 'RR', 'LR'] })
  })

  it('sets each wheel to the label of its new place', () => {
    const split = { ...utilitySheet, placard: { ...utilitySheet.placard, rear: { psi: 42, kPa: 290 } } }
    const plan = planRotation('front-to-back', split, wheels())
    const set = plan.ok ? plan.after.find((one) => one.does === 'set-pressures') : undefined
    expect(
      set?.does === 'set-pressures' &&
        set.targets.map(({ position, cameFrom: from, set: to }) => [position, from, to.value]),
    ).toEqual([
      ['LF', 'LR', 35],
      ['RF', 'RR', 35],
      ['RR', 'RF', 42],
      ['LR', 'LF', 42],
    ])
  })

  it('with a spare in it torques no spare, and learns the spare only where the vehicle listens to it', () => {
    const plan = planRotation('five-rearward-cross', utilitySheet, wheels())
    expect(plan.ok && plan.after[0]).toEqual({ does: 'torque', wheels: ['LF', 'RF', 'RR', 'LR'] })
    expect(plan.ok && plan.storedIds.SP).toBeUndefined()
    const heard = planRotation(
      'five-rearward-cross',
      { ...utilitySheet, spare: 'full-size', spareMonitored: true },
      wheels(),
    )
    expect(heard.ok && heard.storedIds.SP).toBe('1A2B3C10')
    expect(heard.ok && heard.after.at(-1)).toEqual({
      does: 'relearn',
      places: ['LF', 'RF', 'RR', 'LR', 'SP'],
    })
  })

  it.each([
    ['direct', true, ['let-it-locate']],
    ['direct', false, ['relearn']],
    ['indirect', false, ['reset']],
    ['unknown', false, ['settle-system']],
    ['none', false, []],
  ] as const)('of a vehicle whose system is %s (locating: %s) is followed by %j', (system, locates, last) => {
    const plan = planRotation('cross', { ...utilitySheet, system, locatesWheels: locates }, wheels())
    expect(plan.ok && plan.after.slice(2).map(({ does }) => does)).toEqual(last)
    if (system === 'indirect' || system === 'none') expect(plan.ok && plan.storedIds).toEqual({})
  })

  it('that the tires refuse moves nothing and names every reason', () => {
    const plan = planRotation('cross', utilitySheet, everyWheel({ directional: true }))
    expect(plan).toMatchObject({ ok: false })
    expect(plan.ok ? [] : plan.refusals).toHaveLength(4)
  })

  it('and back again leaves the stored places as they were', () => {
    fc.assert(
      fc.property(anyMoves, (moves) => {
        const there = carried(moves, wheels())
        const back = carried(inverse(moves), there)
        expect(expectedIds({ system: 'direct', spare: 'full-size', spareMonitored: true }, back)).toEqual(
          expectedIds({ system: 'direct', spare: 'full-size', spareMonitored: true }, wheels()),
        )
      }),
      settings,
    )
  })

  it('does not claim an ID that was not read', () => {
    const unread = wheels({ LF: { ...tire('LF'), sensorId: null } })
    const plan = planRotation('front-to-back', utilitySheet, unread)
    expect(plan.ok && plan.storedIds.LR).toBeNull()
    expect(
      expectedIds({ system: 'direct', spare: 'none', spareMonitored: true }, wheels()).SP,
    ).toBeUndefined()
  })
})
