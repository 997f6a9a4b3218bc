import { type Face, facesOf, type Typeface } from './faces.ts'
import { isOfStandAlone } from './laid-once.ts'

/** Figures of one width, so that columns of them align. */
const figures = ['tnum']

/** The font features of a text; none without a figure in it, because a text without is set from a cache. */
export const featuresFor = (text: string): string[] => (/\d/.test(text) ? [...figures] : [])

/** Consecutive characters that one font file can draw; `face` is null where no file has the glyph. */
export type Run = { readonly face: Face | null; readonly text: string }

/** Width in ems of the outlined box drawn for a character that no font has. */
export const boxEms = 0.62

/** Entries of a cache, which is emptied when it is full. */
const mostKept = 5_000

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' })

/** Cutting a text of characters that join nothing takes a tenth of what the segmenter takes. */
export const graphemesOf = (text: string): string[] =>
  isOfStandAlone(text) ? Array.from(text) : Array.from(graphemes.segment(text), ({ segment }) => segment)

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

/** The font of each character that was met, by typeface. */
const chosen = new Map<string, Face | null>()

const faceFor = (grapheme: string, typeface: Typeface): Face | null => {
  const key = `${typeface} ${grapheme}`
  const known = chosen.get(key)
  if (known !== undefined) return known
  const face =
    facesOf(typeface).find(({ font }) =>
      Array.from(grapheme).every((character) => font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0)),
    ) ?? null
  if (chosen.size >= mostKept) chosen.clear()
  chosen.set(key, face)
  return face
}

/** Width of one run in points at a size in points. */
export const widthOfRun = ({ face, text }: Run, size: number): number =>
  face ? emsOf(face, text) * size : graphemesOf(text).length * boxEms * size

const measured = new Map<string, number>()

/** Words come again and again within a report and between reports; the cache is emptied when it is full. */
const emsOf = (face: Face, text: string): number => {
  const key = `${face.name} ${text}`
  const known = measured.get(key)
  if (known !== undefined) return known
  const ems = face.font.layout(text, featuresFor(text)).advanceWidth / face.font.unitsPerEm
  if (measured.size >= mostKept) measured.clear()
  measured.set(key, ems)
  return ems
}

/** Width of text in points at a size in points. */
export const widthOf = (text: string, typeface: Typeface, size: number): number =>
  runsOf(text, typeface).reduce((sum, run) => sum + widthOfRun(run, size), 0)
