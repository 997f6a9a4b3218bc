import { describe, expect, it } from 'vitest'
import { type GuardEvent, type GuardState, guardStep, unguarded } from './press-guard.ts'

type Event = GuardEvent<string>

/** A finger comes down on a control and leaves it; a click follows on what lies there by then. */
const tap = (at: number, control: string, { clicks = control, pointer = 1, lasts = 100 } = {}): Event[] => [
  { kind: 'down', pointer, isFirst: true, isTouch: true, control, at },
  { kind: 'up', pointer, at: at + lasts },
  { kind: 'click', pointer, control: clicks, at: at + lasts + 1 },
]
const down = (at: number, pointer: number, control: string, isFirst = true): Event => ({
  kind: 'down',
  pointer,
  isFirst,
  isTouch: true,
  control,
  at,
})
const up = (at: number, pointer: number): Event => ({ kind: 'up', pointer, at })
const click = (at: number, pointer: number, control: string): Event => ({
  kind: 'click',
  pointer,
  control,
  at,
})

/** Of each event that could reach something, whether it did. */
const reached = (events: readonly Event[]): string[] => {
  let state: GuardState<string> = unguarded
  return events.flatMap((event) => {
    const answer = guardStep(state, event)
    state = answer.state
    const what = event.kind === 'down' || event.kind === 'click' ? `${event.kind} ${event.control}` : null
    return [
      ...(what === null || answer.isDead ? [] : [what]),
      ...(answer.callsOffHold ? ['hold called off'] : []),
    ]
  })
}

const heldUntil = (released: number): Event[] => [
  down(0, 1, 'seal'),
  { kind: 'hold-begins', pointer: 1 },
  { kind: 'hold-ends', at: 600 },
  up(released, 1),
]

describe('a press', () => {
  it('counts where it began and ended', () => {
    expect(reached(tap(0, 'next'))).toEqual(['down next', 'click next'])
  })

  it('does nothing to what came up under the finger', () => {
    expect(reached(tap(0, 'next', { clicks: 'record' }))).toEqual(['down next'])
    expect(reached([down(0, 1, 'next'), up(90, 1), click(91, 2, 'next')])).toEqual([
      'down next',
      'click next',
    ])
  })

  it('shorter than 60 ms is rain, by touch only', () => {
    expect(reached(tap(0, 'next', { lasts: 59 }))).toEqual(['down next'])
    expect(reached(tap(0, 'next', { lasts: 60 }))).toEqual(['down next', 'click next'])
    const byMouse = tap(0, 'next', { lasts: 10 }).map(
      (event): Event => (event.kind === 'down' ? { ...event, isTouch: false } : event),
    )
    expect(reached(byMouse)).toEqual(['down next', 'click next'])
  })

  it('of a key or of assistive technology is left alone', () => {
    expect(reached([click(0, -1, 'next')])).toEqual(['click next'])
  })
})

describe('after a hold', () => {
  it('the release clicks nothing, however late the finger leaves', () => {
    for (const released of [600, 900, 1_500, 9_000])
      expect(reached([...heldUntil(released), click(released + 1, 1, 'close the next step')])).toEqual([
        'down seal',
      ])
  })

  it('nothing reacts until 300 ms after the finger has left', () => {
    expect(reached([...heldUntil(900), ...tap(1_199, 'next', { pointer: 2 })])).toEqual(['down seal'])
    expect(reached([...heldUntil(900), ...tap(1_200, 'next', { pointer: 2 })])).toEqual([
      'down seal',
      'down next',
      'click next',
    ])
  })

  it('a tap that began in that time is dead to its end', () => {
    expect(reached([...heldUntil(900), ...tap(1_100, 'next', { pointer: 2, lasts: 400 })])).toEqual([
      'down seal',
    ])
  })

  it('a finger that stays down keeps everything dead', () => {
    expect(
      reached([
        down(0, 1, 'seal'),
        { kind: 'hold-begins', pointer: 1 },
        { kind: 'hold-ends', at: 600 },
        down(5_000, 2, 'next', false),
        up(5_100, 2),
        click(5_101, 2, 'next'),
      ]),
    ).toEqual(['down seal'])
  })

  it('a finger whose end was never reported is forgotten when the next one comes alone', () => {
    expect(
      reached([
        down(0, 1, 'seal'),
        { kind: 'hold-begins', pointer: 1 },
        { kind: 'hold-ends', at: 600 },
        ...tap(5_000, 'next', { pointer: 2 }),
        ...tap(5_500, 'next', { pointer: 3 }),
      ]),
    ).toEqual(['down seal', 'down next', 'click next'])
  })
})

describe('during a hold', () => {
  const second: Event[] = [
    down(0, 1, 'seal'),
    { kind: 'hold-begins', pointer: 1 },
    down(200, 2, 'undo', false),
  ]

  it('a second finger calls it off and presses nothing', () => {
    expect(reached([...second, up(300, 2), click(301, 2, 'undo')])).toEqual(['down seal', 'hold called off'])
  })

  it('both fingers are dead until both were lifted', () => {
    expect(
      reached([...second, up(300, 2), ...tap(1_000, 'undo', { pointer: 3 }).map(notFirst), up(1_200, 1)]),
    ).toEqual(['down seal', 'hold called off'])
  })

  it('that is let go early nothing rests', () => {
    expect(
      reached([
        down(0, 1, 'seal'),
        { kind: 'hold-begins', pointer: 1 },
        { kind: 'hold-let-go' },
        up(200, 1),
        ...tap(250, 'next', { pointer: 2 }),
      ]),
    ).toEqual(['down seal', 'down next', 'click next'])
  })
})

const notFirst = (event: Event): Event => (event.kind === 'down' ? { ...event, isFirst: false } : event)
