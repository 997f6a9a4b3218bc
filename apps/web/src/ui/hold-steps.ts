/**
 * Press and hold, as a machine without a clock of its own: every event brings its instant in milliseconds.
 * Who cannot hold presses twice: once, and again after as long as a hold would take, so that a double tap is no confirmation.
 */
export const holdMilliseconds = 600
/** A shorter touch is rain or a sleeve, not a person. */
export const ghostMilliseconds = 60
export const secondPressWithinMilliseconds = 8000

/** What called a press off before it was complete. */
export type CalledOff = 'left' | 'second-finger' | 'screen-turned'

export type HoldState =
  | { step: 'resting'; calledOff: CalledOff | null }
  | { step: 'pressed'; since: number; armedAt: number | null }
  | { step: 'armed'; at: number }

export type HoldEvent =
  | { kind: 'down' | 'up' | 'time' | 'press'; at: number }
  | { kind: 'call-off'; why: CalledOff; at: number }

export const resting: HoldState = { step: 'resting', calledOff: null }

/** The next state, and whether the hold is complete. `press` is a whole press at once, as assistive technology makes it. */
export function holdStep(state: HoldState, event: HoldEvent): { state: HoldState; done: boolean } {
  const complete = { state: resting, done: true }
  const same = { state, done: false }
  switch (event.kind) {
    case 'down':
      return state.step === 'pressed'
        ? same
        : { state: { step: 'pressed', since: event.at, armedAt: armedAtOf(state) }, done: false }
    case 'call-off':
      if (state.step === 'resting') return same
      return {
        state: { step: 'resting', calledOff: state.step === 'pressed' ? event.why : null },
        done: false,
      }
    case 'time':
      if (state.step === 'pressed' && event.at - state.since >= holdMilliseconds) return complete
      if (state.step === 'armed' && event.at - state.at > secondPressWithinMilliseconds)
        return { state: resting, done: false }
      return same
    case 'up':
      if (state.step !== 'pressed') return same
      if (event.at - state.since >= holdMilliseconds) return complete
      if (event.at - state.since < ghostMilliseconds)
        return {
          state: state.armedAt === null ? resting : { step: 'armed', at: state.armedAt },
          done: false,
        }
      return pressed(state.armedAt, event.at)
    case 'press':
      return pressed(armedAtOf(state), event.at)
  }
}

const armedAtOf = (state: HoldState): number | null => (state.step === 'armed' ? state.at : null)

function pressed(armedAt: number | null, at: number): { state: HoldState; done: boolean } {
  const wait = armedAt === null ? null : at - armedAt
  if (wait !== null && wait >= holdMilliseconds && wait <= secondPressWithinMilliseconds)
    return { state: resting, done: true }
  return {
    state: { step: 'armed', at: wait !== null && wait < holdMilliseconds ? (armedAt ?? at) : at },
    done: false,
  }
}
