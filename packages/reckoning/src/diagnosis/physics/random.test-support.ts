/** A source of chance that gives the same numbers every time for the same seed. */
export type Random = {
  /** From `least` up to `most`, each as likely as the other. */
  readonly between: (least: number, most: number) => number
  /** Around zero as errors of instruments are, and never beyond `most` either way. */
  readonly error: (usual: number, most: number) => number
  readonly chance: (share: number) => boolean
  readonly oneOf: <T>(choices: readonly T[]) => T
  /** `count` of them, in an order of chance. */
  readonly some: <T>(choices: readonly T[], count: number) => T[]
}

/**
 * A counter scrambled by multiplication and shifts (the published 32-bit generator "mulberry32"): good enough to draw
 * vehicles, and the same on every machine.
 */
export const randomFrom = (seed: number): Random => {
  let state = seed >>> 0
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
  const between = (least: number, most: number): number => least + (most - least) * next()
  const some = <T>(choices: readonly T[], count: number): T[] =>
    choices
      .map((choice) => ({ choice, place: next() }))
      .sort((one, other) => one.place - other.place)
      .slice(0, count)
      .map(({ choice }) => choice)
  return {
    between,
    // The sum of twelve even draws less six has a standard deviation of one.
    error: (usual, most) => {
      const drawn = Array.from({ length: 12 }, next).reduce((sum, one) => sum + one, -6) * usual
      return Math.max(-most, Math.min(most, drawn))
    },
    chance: (share) => next() < share,
    oneOf: (choices) => {
      const chosen = choices[Math.floor(next() * choices.length)]
      if (chosen === undefined) throw new Error('nothing to choose from')
      return chosen
    },
    some,
  }
}
