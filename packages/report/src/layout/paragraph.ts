import type { Typeface } from '../fonts/faces.ts'
import { printable } from '../fonts/printable.ts'
import { graphemesOf, widthOf } from '../fonts/runs.ts'
import type { Mark, Tone } from './page-elements.ts'

export type Style = { readonly typeface: Typeface; readonly size: number; readonly tone?: Tone }

export const lineHeight = ({ size }: Style): number => size * 1.28

/**
 * Breaks text into lines no wider than `width` points, at spaces, or inside a word that is too wide by itself.
 * Every line but the last keeps a space at its end, so that the text read back has its word gaps.
 */
export const linesOf = (text: string, style: Style, width: number): string[] => {
  const lines: string[] = []
  const space = widthOf(' ', style.typeface, style.size)
  let line = ''
  let used = 0
  for (const piece of printable(text)
    .split(/ +/)
    .filter((word) => word !== '')
    .flatMap((word) => piecesOf(word, style, width))) {
    const gap = line === '' || piece.joined ? 0 : space
    if (line === '' || used + gap + piece.width <= width) {
      line += gap === 0 ? piece.text : ` ${piece.text}`
      used += gap + piece.width
    } else {
      lines.push(piece.joined ? line : `${line} `)
      line = piece.text
      used = piece.width
    }
  }
  return line === '' ? lines : [...lines, line]
}

/** Points that the widest word of a text needs. */
export const widestWord = (text: string, { typeface, size }: Style): number =>
  Math.max(
    ...printable(text)
      .split(/ +/)
      .map((word) => widthOf(word, typeface, size)),
  )

type Piece = { readonly text: string; readonly width: number; readonly joined: boolean }

/** A word that does not fit a line is cut between characters; a cut piece joins the one before without a space. */
const piecesOf = (word: string, { typeface, size }: Style, width: number): Piece[] => {
  const whole = widthOf(word, typeface, size)
  if (whole <= width) return [{ text: word, width: whole, joined: false }]
  const pieces: Piece[] = []
  let text = ''
  let used = 0
  const close = () => pieces.push({ text, width: used, joined: pieces.length > 0 })
  for (const grapheme of graphemesOf(word)) {
    const next = widthOf(grapheme, typeface, size)
    if (text !== '' && used + next > width) {
      close()
      text = ''
      used = 0
    }
    text += grapheme
    used += next
  }
  close()
  return pieces
}

/** One line of text whose top is at `top`. */
export const textMark = (text: string, x: number, top: number, style: Style): Mark => ({
  kind: 'text',
  x,
  baseline: top + style.size * 0.96,
  text: printable(text),
  typeface: style.typeface,
  size: style.size,
  tone: style.tone ?? 'ink',
})

export const lineMarks = (lines: readonly string[], x: number, top: number, style: Style): Mark[] =>
  lines.map((line, index) => textMark(line, x, top + index * lineHeight(style), style))

/** The first lines of a text; a cut text ends in an ellipsis and `continued`, which says where the rest is. */
export const cutTo = (
  lines: readonly string[],
  most: number,
  style: Style,
  width: number,
  continued: string,
): string[] => {
  if (lines.length <= most) return [...lines]
  const kept = lines.slice(0, most)
  let last = (kept.pop() ?? '').trimEnd()
  const ending = `… (${continued})`
  while (last !== '' && widthOf(`${last} ${ending}`, style.typeface, style.size) > width)
    last = last.slice(0, Math.max(0, last.lastIndexOf(' ')))
  return [...kept, `${last} ${ending}`]
}
