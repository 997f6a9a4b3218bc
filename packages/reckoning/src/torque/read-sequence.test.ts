import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readSequence, sequenceText } from './read-sequence.ts'
import { sequenceDoubt } from './sequence-rule.ts'

describe("a maker's order of tightening", () => {
  it.each(['1-3-5-2-4', '1, 3, 5, 2, 4', ' 1 3  5 2 4 ', '1 · 3 · 5 · 2 · 4', '1–3–5–2–4'])(
    'is read from "%s"',
    (typed) => {
      expect(readSequence(typed, 5)).toEqual({ ok: true, value: [1, 3, 5, 2, 4] })
    },
  )

  it('is read from numbers, also one that is not our star', () => {
    expect(readSequence([1, 3, 4, 2], 4)).toEqual({ ok: true, value: [1, 3, 4, 2] })
    expect(readSequence('1-6-9-4-7-2-5-10-3-8', 10)).toMatchObject({ ok: true })
    expect(readSequence('10-5-2-7-4-9-6-1-8-3', 10)).toMatchObject({ ok: true })
  })

  it.each([
    ['', 'not-numbers', 'whole numbers', 'clockwise'],
    ['star', 'not-numbers', 'whole numbers', 'clockwise'],
    ['1--3-5', 'not-numbers', 'whole numbers', 'clockwise'],
    ['135-2-4', 'not-numbers', 'whole numbers', 'clockwise'],
    ['1-3-5-2', 'wrong-count', 'each of the 5 fasteners once', '4 are named'],
    ['1-3-5-2-6', 'no-such-fastener', '1 to 5', 'no fastener 6 on a wheel of 5'],
    ['1-3-5-3-4', 'named-twice', 'each of the 5 fasteners once', '3 is named twice'],
    ['1-2-3-4-5', 'too-near', 'across the wheel', 'From 1 to 2'],
  ])('"%s" is refused as %s, with what is allowed and what to do', (typed, fault, allowed, action) => {
    const read = readSequence(typed, 5)
    expect(read).toMatchObject({ ok: false, fault, found: typed })
    if (read.ok) return
    expect(read.allowed).toContain(allowed)
    expect(read.do).toContain(action)
  })

  it.each([
    '1+6, 3+8, 5+10, 2+7, 4+9',
    '1&6-3&8-5&10-2&7-4&9',
    '(1, 6) (3, 8) (5, 10) (2, 7) (4, 9)',
    '1 and 6, 3 and 8',
    '1-6-9-4-7-2-5-10-3-8 / 1-2-3-4-5-6-7-8-9-10',
    '1-6-9-4-7-2-5-10-3-8; then 1-2-3-4-5-6-7-8-9-10',
    '1-6-9-4-7-2-5-10-3-8-1-6-9-4-7-2-5-10-3-8',
  ])('"%s" is refused as a compound pattern, with the reason', (typed) => {
    const read = readSequence(typed, 10)
    expect(read).toMatchObject({
      ok: false,
      fault: 'compound',
      allowed: 'one order, in which each fastener is tightened alone and once',
    })
    if (!read.ok) expect(read.do).toContain('no source says which single order replaces it')
  })

  it('that names every fastener twice is refused as one also where it is given in numbers', () => {
    expect(readSequence([1, 3, 5, 2, 4, 1, 3, 5, 2, 4], 5)).toMatchObject({
      fault: 'compound',
      found: '1-3-5-2-4-1-3-5-2-4',
    })
  })

  const nearly = fc
    .array(
      fc.oneof(fc.integer({ min: 0, max: 11 }).map(String), fc.constantFrom('-', ',', ' ', '–', 'x', '+')),
      {
        maxLength: 20,
      },
    )
    .map((parts) => parts.join(''))
  const shuffled = fc.shuffledSubarray([1, 2, 3, 4, 5], { minLength: 4 }).map((order) => order.join('-'))

  it('is never guessed: what is taken is right, and reads the same again', () => {
    let taken = 0
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), nearly, shuffled),
        fc.constantFrom(3, 4, 5, 6, 7, 8, 10),
        (typed, studs) => {
          const read = readSequence(typed, studs)
          if (!read.ok) return
          taken += 1
          expect(sequenceDoubt(read.value, studs)).toBeNull()
          expect(readSequence(sequenceText(read.value), studs)).toEqual(read)
        },
      ),
      { seed: 20260112, numRuns: 10_000 },
    )
    expect(taken).toBeGreaterThan(0)
  })
})
