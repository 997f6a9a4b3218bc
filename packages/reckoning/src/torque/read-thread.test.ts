import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readThread } from './read-thread.ts'
import { stressArea, threadDiameter, threadText } from './thread.ts'

describe('a thread', () => {
  it.each([
    ['M12×1.5', 'M12×1.5'],
    ['M12x1.5', 'M12×1.5'],
    [' m14 X 1,5 ', 'M14×1.5'],
    ['M12-1.25', 'M12×1.25'],
    ['M12*1.75', 'M12×1.75'],
    ['M3×0.35', 'M3×0.35'],
    ['M12.5×1.5', 'M12.5×1.5'],
    ['7 / 16 - 20', '7/16-20'],
    ['1/2-20 UN', '1/2-20'],
    ['1/2-20UNF ', '1/2-20'],
    ['M36×4', 'M36×4'],
    ['M10×2.5', 'M10×2.5'],
    ['1/2-20', '1/2-20'],
    ['7/16"-20 UNF', '7/16-20'],
    ['9/16 in-18', '9/16-18'],
    ['5/8 – 18', '5/8-18'],
    ['1/2-13 UNC', '1/2-13'],
    ['2/4-20', '1/2-20'],
    ['1/8-40', '1/8-40'],
    ['31/32-6', '31/32-6'],
    ['1/4-48', '1/4-48'],
  ])('typed as "%s" is %s', (typed, text) => {
    const read = readThread(typed)
    expect(read.ok && threadText(read.value)).toBe(text)
  })

  it.each([
    ['', 'not-a-thread', 'as M12×1.5'],
    ['M12', 'not-a-thread', 'with its pitch'],
    ['12', 'not-a-thread', 'with its pitch'],
    ['M12×1.5×40', 'not-a-thread', 'with its pitch'],
    ['M120×1.5', 'not-a-thread', 'with its pitch'],
    ['AM12×1.5', 'not-a-thread', 'with its pitch'],
    ['M12.x×1.5', 'not-a-thread', 'with its pitch'],
    ['11/2-20', 'diameter', 'under 1'],
    ['-1/2-20', 'not-a-thread', 'as 1/2-20'],
    ['1/2-20 LH', 'not-a-thread', 'as 1/2-20'],
    ['1a/2-20', 'not-a-thread', 'as 1/2-20'],
    ['1/2a-20', 'not-a-thread', 'as 1/2-20'],
    ['1/2-20aUNF', 'not-a-thread', 'as 1/2-20'],
    ['1/2-20 UNX', 'not-a-thread', 'as 1/2-20'],
    ['M2×0.4', 'diameter', 'M3 to M36'],
    ['M37×1.5', 'diameter', 'M3 to M36'],
    ['M12×0.3', 'pitch', '0.35 to 3 mm for M12'],
    ['M12×3.1', 'pitch', '0.35 to 3 mm for M12'],
    ['M30×4.5', 'pitch', '0.35 to 4 mm for M30'],
    ['1/3-20', 'diameter', 'eighths'],
    ['1/16-40', 'diameter', 'from 1/8'],
    ['2/2-20', 'diameter', 'under 1'],
    ['9/8-12', 'diameter', 'under 1'],
    ['1/2-5', 'pitch', '6 to 48'],
    ['1/2-49', 'pitch', '6 to 48'],
    ['1/0-20', 'diameter', 'eighths'],
  ])('typed as "%s" is refused for its %s', (typed, fault, allowed) => {
    const read = readThread(typed)
    expect(read).toMatchObject({ ok: false, fault, found: typed })
    if (read.ok) return
    expect(read.allowed).toContain(allowed)
    expect(read.do).toMatch(/thread gauge/)
  })

  it('says of itself in which system it is written', () => {
    expect(readThread('M12×1.5')).toEqual({ ok: true, value: { system: 'metric', diameter: 12, pitch: 1.5 } })
    expect(readThread('7/16-20')).toEqual({
      ok: true,
      value: { system: 'inch', numerator: 7, denominator: 16, threadsPerInch: 20 },
    })
  })

  it.each([
    ['M12×1.5', 12, 88.13],
    ['M14×1.5', 14, 124.55],
    ['1/2-20', 12.7, 103.17],
    ['7/16-20', 11.1125, 76.58],
  ])('%s has an outer diameter of %d mm and carries on %d mm²', (typed, diameter, area) => {
    const read = readThread(typed)
    if (!read.ok) throw new Error(read.do)
    expect(threadDiameter(read.value)).toBeCloseTo(diameter, 9)
    expect(stressArea(read.value)).toBeCloseTo(area, 1)
  })

  const figure = fc.oneof(
    fc.integer({ min: 0, max: 40 }).map(String),
    fc.constantFrom('1.5', '1,25', '0.75', ''),
  )
  const nearly = fc
    .tuple(fc.constantFrom('M', 'm', '', 'N'), figure, fc.constantFrom('×', 'x', '/', '-', ' '), figure)
    .map((parts) => parts.join(''))
  const fraction = fc
    .tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 60 }))
    .map(([above, below, threads]) => `${above}/${below}-${threads}`)

  it('is never guessed: what is taken reads the same again', () => {
    let taken = 0
    fc.assert(
      fc.property(fc.oneof(fc.string(), nearly, fraction), (typed) => {
        const read = readThread(typed)
        if (!read.ok) return
        taken += 1
        expect(readThread(threadText(read.value))).toEqual(read)
        expect(stressArea(read.value)).toBeGreaterThan(0)
      }),
      { seed: 20260112, numRuns: 10_000 },
    )
    expect(taken).toBeGreaterThan(0)
  })
})
