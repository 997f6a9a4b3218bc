/** Numbers that look random and are the same for the same seed. */
export type Chance = {
  /** A whole number from 0 to 4,294,967,295. */
  readonly word: () => number
  /** A whole number from 0 to `count - 1`. */
  readonly below: (count: number) => number
  /** True in this share of cases, 0 to 1. */
  readonly happens: (share: number) => boolean
  readonly pick: <T>(list: readonly [T, ...T[]]) => T
}

/** The generator sfc32 (small fast counter, 32 bits; from memory). */
export const chanceOf = (seed: number): Chance => {
  let a = 0x9e3779b9 | 0
  let b = 0x243f6a88 | 0
  let c = seed | 0
  let count = 1
  const word = (): number => {
    const sum = (a + b + count) | 0
    count = (count + 1) | 0
    a = b ^ (b >>> 9)
    b = (c + (c << 3)) | 0
    c = (((c << 21) | (c >>> 11)) + sum) | 0
    return sum >>> 0
  }
  for (let turn = 0; turn < 12; turn += 1) word()
  const below = (most: number): number => Math.floor((word() / 2 ** 32) * most)
  return {
    word,
    below,
    happens: (share) => word() < share * 2 ** 32,
    pick: (list) => list[below(list.length)] ?? list[0],
  }
}

/** A seed for a part of something seeded. */
export const seedOf = (seed: number, part: number): number =>
  (Math.imul(seed ^ 0x85ebca6b, 0xc2b2ae35) ^ Math.imul(part + 1, 0x27d4eb2f)) >>> 0
