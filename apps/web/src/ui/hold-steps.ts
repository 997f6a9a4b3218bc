/**
 * Press and hold, as a machine without a clock of its own: every event brings its instant in milliseconds.
 * Who cannot hold presses twice: once, and again after as long as a hold would take, so that a double tap is no confirmation.
 */
export const holdMilliseconds = 600
/** A shorter touch is rain or a sleeve, not a person. */
export const ghostMilliseconds = 60
export const secondPressWithinMilliseconds = 8000

export type HoldState =
  | { step: 'resting' }
  | { step: 'pressed'; since: number; armedAt: number | null }
  | { step: 'armed'; at: number }

export type HoldEvent = { kind: 'down' | 'up' | 'leave' | 'time' | 'press'; at: number }

/** The next state, and whether the hold is complete. `press` is a whole press at once, as assistive technology makes it. */
export function holdStep(state: HoldState, event: HoldEvent): { state: HoldState; done: boolean } {
  const resting = { state: { step: 'resting' } as const, done: false }
  const complete = { state: { step: 'resting' } as const, done: true }
  const armedAt = state.step === 'armed' ? state.at : null
  switch (event.kind) {
    case 'down':
      return state.step === 'pressed'
        ? { state, done: false }
        : { state: { step: 'pressed', since: event.at, armedAt }, done: false }
    case 'leave':
      return resting
    case 'time':
      if (state.step === 'pressed' && event.at - state.since >= holdMilliseconds) return complete
      if (state.step === 'armed' && event.at - state.at > secondPressWithinMilliseconds) return resting
      return { state, done: false }
    case 'up':
      if (state.step !== 'pressed') return { state, done: false }
      if (event.at - state.since >= holdMilliseconds) return complete
      if (event.at - state.since < ghostMilliseconds) {
        return {
          state: state.armedAt === null ? { step: 'resting' } : { step: 'armed', at: state.armedAt },
          done: false,
        }
      }
      return pressed(state.armedAt, event.at)
    case 'press':
      return pressed(armedAt, event.at)
  }
}

function pressed(armedAt: number | null, at: number): { state: HoldState; done: boolean } {
  const wait = armedAt === null ? null : at - armedAt
  if (wait !== null && wait >= holdMilliseconds && wait <= secondPressWithinMilliseconds) {
    return { state: { step: 'resting' }, done: true }
  }
  return {
    state: { step: 'armed', at: wait !== null && wait < holdMilliseconds ? (armedAt ?? at) : at },
    done: false,
  }
}
