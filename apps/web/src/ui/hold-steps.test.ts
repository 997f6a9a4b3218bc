import { describe, expect, it } from 'vitest'
import { type HoldEvent, type HoldState, holdStep, resting } from './hold-steps.ts'

type Told = HoldEvent['kind']

const run = (events: [Told, number][]) => {
  let state: HoldState = resting
  let completions = 0
  for (const [kind, at] of events) {
    const next = holdStep(state, kind === 'call-off' ? { kind, why: 'left', at } : { kind, at })
    state = next.state
    if (next.done) completions += 1
  }
  return { state: state.step, completions }
}

describe('press and hold', () => {
  it('is complete once it was held for 0.6 s, and only once', () => {
    expect(
      run([
        ['down', 0],
        ['time', 600],
        ['up', 900],
      ]),
    ).toEqual({ state: 'resting', completions: 1 })
  })

  it('is not complete before that', () => {
    expect(
      run([
        ['down', 0],
        ['time', 599],
      ]),
    ).toEqual({ state: 'pressed', completions: 0 })
  })

  it('is called off by a finger that slides away', () => {
    expect(
      run([
        ['down', 0],
        ['call-off', 300],
        ['time', 700],
      ]),
    ).toEqual({ state: 'resting', completions: 0 })
  })

  it('says why it was called off, until it is pressed again', () => {
    const pressed = holdStep(resting, { kind: 'down', at: 0 }).state
    const calledOff = holdStep(pressed, { kind: 'call-off', why: 'second-finger', at: 200 }).state
    expect(calledOff).toEqual({ step: 'resting', calledOff: 'second-finger' })
    expect(holdStep(calledOff, { kind: 'down', at: 900 }).state).toMatchObject({
      step: 'pressed',
      armedAt: null,
    })
  })

  it('takes nothing from a hold that was called off: the finger that slides back only releases', () => {
    expect(
      run([
        ['down', 0],
        ['call-off', 300],
        ['up', 900],
      ]),
    ).toEqual({ state: 'resting', completions: 0 })
  })

  it('ignores a touch shorter than 60 ms, armed or not', () => {
    expect(
      run([
        ['down', 0],
        ['up', 59],
      ]),
    ).toEqual({ state: 'resting', completions: 0 })
    expect(
      run([
        ['press', 0],
        ['down', 1000],
        ['up', 1030],
      ]),
    ).toEqual({ state: 'armed', completions: 0 })
  })

  it('takes a second press in its place', () => {
    expect(
      run([
        ['down', 0],
        ['up', 120],
        ['down', 1500],
        ['up', 1620],
      ]),
    ).toEqual({ state: 'resting', completions: 1 })
    expect(
      run([
        ['press', 0],
        ['press', 700],
      ]),
    ).toEqual({ state: 'resting', completions: 1 })
  })

  it('takes no double tap for a second press, however often it comes', () => {
    expect(
      run([
        ['press', 0],
        ['press', 200],
        ['press', 400],
        ['press', 599],
      ]),
    ).toEqual({ state: 'armed', completions: 0 })
  })

  it('forgets a first press after 8 s', () => {
    expect(
      run([
        ['press', 0],
        ['time', 8001],
      ]),
    ).toEqual({ state: 'resting', completions: 0 })
    expect(
      run([
        ['press', 0],
        ['press', 8001],
      ]),
    ).toEqual({ state: 'armed', completions: 0 })
  })

  it('does not start over when a held key repeats', () => {
    expect(
      run([
        ['down', 0],
        ['down', 500],
        ['time', 600],
      ]),
    ).toEqual({ state: 'resting', completions: 1 })
  })
})
