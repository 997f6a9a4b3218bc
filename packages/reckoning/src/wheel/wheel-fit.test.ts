import { describe, expect, it } from 'vitest'
import { millimeters as mm } from '../units/measured.ts'
import { hubFit } from './hub-fit.ts'
import { offsetShift } from './offset-shift.ts'
import { threadEngagement } from './thread-engagement.ts'
import { type WheelFitOf, wheelFit } from './wheel-fit.ts'

const own = {
  holes: 5,
  boltCircle: mm(114.3),
  hub: mm(67.1),
  rim: { widthInches: 7, offset: mm(45) },
}
const of: WheelFitOf = {
  vehicle: own,
  wheel: own,
  seats: { fastener: 'cone', wheel: 'cone' },
  thread: 'M12×1.5',
  turns: 8,
  sheetTurns: 7,
}

describe('a hub', () => {
  it.each([
    [67.1, 'centers', 0],
    [67.2, 'centers', 0.1],
    [67, 'centers', -0.1],
    [73.1, 'needs-ring', 6],
    [67.3, 'needs-ring', 0.2],
    [66.9, 'does-not-go-on', -0.2],
  ])('of 67.1 mm under a bore of %f mm: %s', (bore, outcome, apart) => {
    const fit = hubFit(mm(67.1), mm(bore))
    expect(fit.outcome).toBe(outcome)
    expect(fit.apart).toBeCloseTo(apart, 9)
  })
})

describe('another rim', () => {
  it('with 10 mm less offset moves out by 10 mm and makes the track 20 mm wider', () => {
    expect(offsetShift({ widthInches: 7, offset: mm(45) }, { widthInches: 7, offset: mm(35) })).toEqual({
      out: 10,
      track: 20,
      outerEdge: 10,
      innerEdge: -10,
    })
  })

  it('that is wider goes out and in by half of that at the same offset', () => {
    const shift = offsetShift({ widthInches: 7, offset: mm(45) }, { widthInches: 8, offset: mm(45) })
    expect(shift).toMatchObject({ out: 0, track: 0 })
    expect(shift.outerEdge).toBeCloseTo(12.7, 9)
    expect(shift.innerEdge).toBeCloseTo(12.7, 9)
  })
})

describe('turns on a thread', () => {
  it.each([
    ['M12×1.5', 6.4, null, 'short-of-trade'],
    ['M12×1.5', 6.5, null, 'under-one-diameter'],
    ['M12×1.5', 8, null, 'enough'],
    ['M12×1.5', 8, 9, 'short-of-sheet'],
    ['M12×1.5', 9, 9, 'enough'],
    ['1/2-20', 8, null, 'under-one-diameter'],
    ['1/2-20', 10, null, 'enough'],
    ['M14×1.25', 11.1, null, 'short-of-trade'],
    ['M14×1.25', 11.2, null, 'enough'],
  ] as const)('%s, %f turns, sheet %s: %s', (thread, turns, sheetTurns, outcome) => {
    expect(threadEngagement(thread, turns, sheetTurns)).toMatchObject({ outcome })
  })

  it('of a thread that cannot be read are not judged', () => {
    expect(threadEngagement('M12', 8, null)).toEqual({ outcome: 'unreadable-thread' })
  })

  it('says how many turns make one diameter', () => {
    expect(threadEngagement('1/2-20', 8, null)).toMatchObject({ leastTurns: 8, turnsOfOneDiameter: 10 })
  })
})

describe('a wheel', () => {
  it('like the own one fits', () => {
    expect(wheelFit(of)).toMatchObject({ outcome: 'fits', refusals: [], gaps: [] })
  })

  it.each([
    ['holes', { wheel: { ...own, holes: 6 } }],
    ['bolt-circle', { wheel: { ...own, boltCircle: mm(115) } }],
    ['hub', { wheel: { ...own, hub: mm(66.1) } }],
    ['seat', { seats: { fastener: 'cone', wheel: 'ball' } }],
    ['turns', { turns: 6 }],
  ] as const)('is refused for its %s', (what, change) => {
    expect(wheelFit({ ...of, ...change })).toMatchObject({ outcome: 'refused', refusals: [what] })
  })

  it('with a wider bore fits with a ring, and one of 114.1 mm is on the same circle', () => {
    expect(wheelFit({ ...of, wheel: { ...own, hub: mm(73.1), boltCircle: mm(114.1) } })).toMatchObject({
      outcome: 'fits',
      hub: { outcome: 'needs-ring' },
    })
  })

  it('is open while anything is not measured, and refused all the same where something else is wrong', () => {
    const unmeasured = { holes: null, boltCircle: null, hub: null, rim: null }
    const unknown = { ...of, wheel: unmeasured, seats: { fastener: 'cone', wheel: null } } as const
    expect(wheelFit({ ...unknown, turns: null })).toEqual({
      outcome: 'open',
      refusals: [],
      gaps: ['holes', 'bolt-circle', 'hub', 'seat', 'turns', 'offset'],
      hub: null,
      shift: null,
      engagement: null,
    })
    expect(wheelFit({ ...unknown, turns: 5 })).toMatchObject({ outcome: 'refused', refusals: ['turns'] })
    expect(wheelFit({ ...of, thread: 'M12' })).toMatchObject({ outcome: 'open', gaps: ['turns'] })
    expect(wheelFit({ ...of, thread: null })).toMatchObject({ outcome: 'open', engagement: null })
    expect(wheelFit({ ...of, vehicle: { ...unmeasured, holes: 5 } })).toMatchObject({
      gaps: ['bolt-circle', 'hub', 'offset'],
    })
  })
})
