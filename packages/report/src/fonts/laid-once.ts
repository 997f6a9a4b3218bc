import type { Font, GlyphPosition } from 'fontkit'

type Glyph = { readonly id: number; readonly advanceWidth: number; readonly codePoints: readonly number[] }
type Laid = { readonly glyphs: readonly Glyph[]; readonly positions: readonly GlyphPosition[] }

/** Texts of a cache, which is emptied when it is full. */
const mostKept = 2_000

/**
 * Printable Latin, dashes, quotes and dots of print: each character of them is one glyph, and none ever joins its
 * neighbor. Nearly every text of a report has no others.
 */
const standAlone = /^[ -~\u00a0-\u02ff\u2010-\u2027]*$/

export const isOfStandAlone = (text: string): boolean => standAlone.test(text)

/**
 * A font that keeps the layout of each text: laying out is most of what drawing a report costs, and the same words come
 * again and again, within a report and between reports.
 *
 * A font remembers of each glyph the characters that it met first, and a document writes those into its map from glyphs
 * to characters. So that the same content gives the same bytes whatever was drawn before, a text whose glyphs may join
 * is laid out by a font that has met nothing else. The others are safe: no font here draws two characters alike.
 */
export const laidOnce = (newFont: () => Font): Font => {
  const font = newFont()
  const kept = new Map<string, Laid>()
  const layout = (text: string, features: string[] = []): Run => {
    const key = `${features.join()} ${text}`
    const known = kept.get(key)
    if (known) return runOf(known)
    if (kept.size >= mostKept) kept.clear()
    const { glyphs, positions } = (isOfStandAlone(text) ? font : newFont()).layout(text, features)
    const laid = { glyphs: glyphs.map(plain), positions }
    kept.set(key, laid)
    return runOf(laid)
  }
  return Object.create(font, { layout: { value: layout } }) as Font
}

/** Without the font that a glyph belongs to. */
const plain = ({ id, advanceWidth, codePoints }: Glyph): Glyph => ({ id, advanceWidth, codePoints })

type Run = Laid & { readonly advanceWidth: number }

/** A copy, because a document scales the positions that it is given, and reads the width of the scaled ones. */
const runOf = ({ glyphs, positions }: Laid): Run => {
  const copies = positions.map((position) => ({ ...position }))
  return {
    glyphs,
    positions: copies,
    get advanceWidth() {
      return copies.reduce((sum, { xAdvance }) => sum + xAdvance, 0)
    },
  }
}
