import { sha256Hex } from '@bayledger/ledger/digests'

/** Chance that is the same at every run: each call draws the next number of its seed. */
export type Chance = {
  /** From 0 up to, and never, 1. */
  readonly share: () => number
  readonly between: (low: number, high: number) => number
  /** A whole number; both ends are drawn. */
  readonly whole: (low: number, high: number) => number
  readonly isOf: (probability: number) => boolean
  readonly pick: <T>(from: readonly [T, ...T[]]) => T
  readonly weighted: <T>(from: readonly (readonly [weight: number, one: T])[]) => T
  /** Around 1, and as often half as twice the usual for a spread of about 0.4. */
  readonly noise: (spread: number) => number
}

/** Mulberry32, a generator of 32 bits in the public domain (from memory); good enough for a demo and for nothing secret. */
export const chanceOf = (seed: string): Chance => {
  let state = Number.parseInt(sha256Hex(seed).slice(0, 8), 16)
  const share = (): number => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
  const between = (low: number, high: number) => low + (high - low) * share()
  const whole = (low: number, high: number) => Math.floor(between(low, high + 1))
  return {
    share,
    between,
    whole,
    isOf: (probability) => share() < probability,
    pick: (from) => from[whole(0, from.length - 1)] ?? from[0],
    weighted: (from) => {
      let left = share() * from.reduce((sum, [weight]) => sum + weight, 0)
      for (const [weight, one] of from) {
        left -= weight
        if (left < 0) return one
      }
      throw new RangeError('nothing to choose from')
    },
    noise: (spread) => {
      // Twelve drawn numbers less six are nearly normal (central limit theorem).
      const normal = Array.from({ length: 12 }, share).reduce((sum, one) => sum + one, -6)
      return Math.exp(spread * normal)
    },
  }
}
