import type { Cell } from '../content.ts'
import { widthOf } from '../fonts/runs.ts'
import type { Mark } from './page-elements.ts'
import { outlinedBox } from './page-elements.ts'
import { lineHeight, lineMarks, linesOf, type Style, textMark } from './paragraph.ts'
import { tick } from './severity-shape.ts'

/** A cell laid out for a width: its height, and its marks once its place is known. */
export type LaidCell = {
  readonly height: number
  readonly marksAt: (x: number, top: number) => readonly Mark[]
}

const gapInset = 3
const tickRoom = 12

/**
 * Lays a cell out. `wholeDigits` is the width that the widest whole part of a number takes in this column:
 * numbers are aligned at their decimal points.
 */
export const layCell = (cell: Cell, width: number, style: Style, wholeDigits = 0): LaidCell => {
  switch (cell.kind) {
    case 'figure': {
      const indent = Math.max(0, wholeDigits - wholePartWidth(cell.value, style))
      return {
        height: lineHeight(style),
        marksAt: (x, top) => figureMarks(cell.value, cell.unit, x + indent, top, style),
      }
    }
    case 'words':
      return layWords(cell.text, width, style)
    case 'id':
      return layWords(cell.text, width, {
        ...style,
        typeface: style.typeface === 'bold' ? 'mono-bold' : 'mono',
      })
    case 'gap': {
      const inner = layWords(cell.text, width - 2 * gapInset, style)
      const inked = Math.min(width, inner.widest + 2 * gapInset)
      return {
        height: inner.height + 2,
        marksAt: (x, top) => [
          outlinedBox({ x, y: top, width: inked, height: inner.height + 1.5 }, 0.8, 2.5),
          ...inner.marksAt(x + gapInset, top + 0.5),
        ],
      }
    }
    case 'good': {
      const inner = layWords(cell.text, width - tickRoom, style)
      return {
        height: inner.height,
        marksAt: (x, top) => [
          tick(x, top + style.size * 0.26, style.size * 0.75),
          ...inner.marksAt(x + tickRoom, top),
        ],
      }
    }
  }
}

const layWords = (text: string, width: number, style: Style): LaidCell & { readonly widest: number } => {
  const lines = linesOf(text, style, width)
  return {
    height: Math.max(1, lines.length) * lineHeight(style),
    widest: Math.max(0, ...lines.map((line) => widthOf(line.trimEnd(), style.typeface, style.size))),
    marksAt: (x, top) => lineMarks(lines, x, top, style),
  }
}

/** A number with its unit in smaller type on the same baseline, a space between them in the text as well. */
export const figureMarks = (
  value: string,
  unit: string,
  x: number,
  top: number,
  style: Style,
): readonly Mark[] => {
  const number = textMark(value, x, top, style)
  if (unit === '' || number.kind !== 'text') return [number]
  return [
    number,
    {
      ...number,
      x: x + widthOf(value, style.typeface, style.size),
      // The space after it keeps what follows on the line apart when the text is read back.
      text: ` ${unit} `,
      size: style.size * unitScale,
    },
  ]
}

const unitScale = 0.82

export const widthOfFigure = (value: string, unit: string, { typeface, size }: Style): number =>
  widthOf(value, typeface, size) + (unit === '' ? 0 : widthOf(` ${unit}`, typeface, size * unitScale))

/** Width of a number's part before the decimal point. */
export const wholePartWidth = (value: string, { typeface, size }: Style): number =>
  widthOf(value.split('.')[0] ?? '', typeface, size)

/** The cell as one line of words, for an alternative text. */
export const cellWords = (cell: Cell): string =>
  cell.kind === 'figure' ? `${cell.value} ${cell.unit}`.trim() : cell.text
