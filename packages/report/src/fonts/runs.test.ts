import * as fc from 'fast-check'
import { expect, it } from 'vitest'
import { graphemesOf } from './runs.ts'

/** The segmenter is the outside source here: Unicode's rules for what a reader takes for one character. */
const bySegmenter = (text: string): string[] =>
  Array.from(new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(text), ({ segment }) => segment)

/** What reports are written in, and what joins its neighbors: accents, joiners, flags, skin tones, line ends. */
const characters = [
  ...Array.from('aZ 0~é°×ŝˏ–—’“”…·‑'),
  '\u0301',
  '\u200d',
  '\ufe0f',
  '\u{1f1fa}',
  '\u{1f1f8}',
  '\u{1f44d}',
  '\u{1f3fd}',
  '\r',
  '\n',
  '\u00ad',
  '\u00a9',
]

it('a text is cut into characters as Unicode cuts it, the quick way for plain texts included', () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...characters), { maxLength: 12 }), (some) => {
      const text = some.join('')
      expect(graphemesOf(text)).toEqual(bySegmenter(text))
    }),
    { numRuns: 5_000 },
  )
})

it('no character of the quick way joins its neighbor', () => {
  const quick = [
    [0x20, 0x7e],
    [0xa0, 0x2ff],
    [0x2010, 0x2027],
  ].flatMap(([from = 0, to = 0]) =>
    Array.from({ length: to - from + 1 }, (_, index) => String.fromCodePoint(from + index)),
  )
  for (const neighbor of ['a', '©', '’', ' ']) {
    const text = quick.map((one) => one + neighbor).join('')
    expect(graphemesOf(text)).toEqual(bySegmenter(text))
  }
})
