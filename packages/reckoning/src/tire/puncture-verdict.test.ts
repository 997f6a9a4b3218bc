import { describe, expect, it } from 'vitest'
import { judgePuncture, type PuncturedTire, type SeenPuncture } from './puncture-verdict.ts'

const hole: SeenPuncture = { place: 'crown', millimeters: 5, overlapsRepair: false }
const tire: PuncturedTire = { punctures: [hole], treadDepth32nds: 6, isSoundInside: true }
/** A second hole, its repair unit clear of the first. */
const apart: SeenPuncture = { ...hole, overlapsOther: false }
const withHole = (change: Partial<SeenPuncture>): PuncturedTire => ({
  ...tire,
  punctures: [{ ...hole, ...change }],
})

// The tire trade association's puncture repair procedure, from memory.
describe('a puncture', () => {
  it('in the crown, up to 6 mm wide, over no other repair, in a sound tire with tread is repairable', () => {
    expect(judgePuncture(tire)).toEqual({ verdict: 'repairable' })
    expect(judgePuncture(withHole({ millimeters: 6 }))).toEqual({ verdict: 'repairable' })
    expect(judgePuncture({ ...tire, punctures: [hole, apart] })).toEqual({ verdict: 'repairable' })
  })

  it.each([
    ['place', withHole({ place: 'shoulder' })],
    ['place', withHole({ place: 'sidewall' })],
    ['width', withHole({ millimeters: 6.1 })],
    ['overlap', withHole({ overlapsRepair: true })],
    ['between', { ...tire, punctures: [hole, { ...hole, overlapsOther: true }] }],
    ['inside', { ...tire, isSoundInside: false }],
    ['tread', { ...tire, treadDepth32nds: 2 }],
  ] as const)('outside one limit is not repairable, whatever else is known: %s', (doubt, punctured) => {
    expect(judgePuncture(punctured)).toEqual({ verdict: 'not-repairable', because: [doubt] })
    const unread = { ...punctured, punctures: [...punctured.punctures, { ...apart, millimeters: null }] }
    expect(judgePuncture(unread)).toEqual({ verdict: 'not-repairable', because: [doubt] })
  })

  it.each([
    ['width', withHole({ millimeters: null })],
    ['place', withHole({ place: null })],
    ['overlap', withHole({ overlapsRepair: null })],
    ['between', { ...tire, punctures: [hole, hole] }],
    ['inside', { ...tire, isSoundInside: null }],
    ['tread', { ...tire, treadDepth32nds: null }],
  ] as const)('of which something was not looked at has no verdict yet: %s', (doubt, punctured) => {
    expect(judgePuncture(punctured)).toEqual({ verdict: 'unknown', because: [doubt] })
  })
})
