import { type Face, facesOf, type Typeface } from './faces.ts'

/** Figures of one width, so that columns of them align. */
export const fontFeatures = ['tnum'] as const

/** Consecutive characters that one font file can draw; `face` is null where no file has the glyph. */
export type Run = { readonly face: Face | null; readonly text: string }

/** Width of the outlined box that stands for a character no font has, in ems. */
export const boxEms = 0.62

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' })

export const graphemesOf = (text: string): string[] =>
  Array.from(graphemes.segment(text), ({ segment }) => segment)

/** Cuts text into runs, glyph by glyph, so that one unusual letter never changes its neighbors' font. */
export const runsOf = (text: string, typeface: Typeface): Run[] => {
  const runs: { face: Face | null; text: string }[] = []
  for (const grapheme of graphemesOf(text)) {
    const face = faceFor(grapheme, typeface)
    const last = runs.at(-1)
    if (last && last.face === face) last.text += grapheme
    else runs.push({ face, text: grapheme })
  }
  return runs
}

const faceFor = (grapheme: string, typeface: Typeface): Face | null =>
  facesOf(typeface).find(({ font }) =>
    Array.from(grapheme).every((character) => font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0)),
  ) ?? null

/** Width of one run in points at a size in points. */
export const widthOfRun = ({ face, text }: Run, size: number): number =>
  face
    ? (face.font.layout(text, [...fontFeatures]).advanceWidth / face.font.unitsPerEm) * size
    : graphemesOf(text).length * boxEms * size

/** Width of text in points at a size in points. */
export const widthOf = (text: string, typeface: Typeface, size: number): number =>
  runsOf(text, typeface).reduce((sum, run) => sum + widthOfRun(run, size), 0)
