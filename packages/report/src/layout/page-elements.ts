import type { Typeface } from '../fonts/faces.ts'

/** Ink or bare paper: the report is made for one ink. */
export type Tone = 'ink' | 'paper'

/** One thing to draw; lengths in points, origin at the page's top left, y downward. */
export type Mark =
  | {
      readonly kind: 'text'
      readonly x: number
      readonly baseline: number
      readonly text: string
      readonly typeface: Typeface
      readonly size: number
      readonly tone: Tone
    }
  | ({ readonly kind: 'image' /** A JPEG. */; readonly bytes: Uint8Array } & Box)
  | {
      readonly kind: 'path'
      /** SVG path words. */
      readonly d: string
      readonly fill: Tone | null
      readonly stroke: { readonly width: number; readonly dash: number | null } | null
    }

/** Marks on one page that belong to one element, or to none (furniture that a reader skips). */
export type Content = { readonly kind: 'content'; readonly page: number; readonly marks: readonly Mark[] }
export type Furniture = { readonly kind: 'furniture'; readonly page: number; readonly marks: readonly Mark[] }

/** Standard structure types of ISO 32000-1, 14.8.4. */
export type Role =
  | 'Document'
  | 'Sect'
  | 'H1'
  | 'H2'
  | 'H3'
  | 'P'
  | 'BlockQuote'
  | 'L'
  | 'LI'
  | 'LBody'
  | 'Table'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Figure'

/** A node of the document's structure, in reading order; page numbers never fall along it. */
export type Element = {
  readonly kind: 'element'
  readonly role: Role
  readonly alt: string | null
  readonly scope: 'Column' | 'Row' | null
  readonly box: Box | null
  readonly children: Item[]
}
export type Item = Element | Content | Furniture

export type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number }

export const element = (
  role: Role,
  children: Item[] = [],
  rest: { readonly alt?: string; readonly scope?: 'Column' | 'Row'; readonly box?: Box } = {},
): Element => ({
  kind: 'element',
  role,
  alt: rest.alt ?? null,
  scope: rest.scope ?? null,
  box: rest.box ?? null,
  children,
})

export const content = (page: number, marks: readonly Mark[]): Content => ({ kind: 'content', page, marks })

export const furniture = (page: number, marks: readonly Mark[]): Furniture => ({
  kind: 'furniture',
  page,
  marks,
})

/** A straight rule. */
export const rule = (x1: number, y1: number, x2: number, y2: number, width = 0.5): Mark => ({
  kind: 'path',
  d: `M ${x1} ${y1} L ${x2} ${y2}`,
  fill: null,
  stroke: { width, dash: null },
})

export const boxPath = ({ x, y, width, height }: Box): string =>
  `M ${x} ${y} L ${x + width} ${y} L ${x + width} ${y + height} L ${x} ${y + height} Z`

export const filledBox = (box: Box, tone: Tone = 'ink'): Mark => ({
  kind: 'path',
  d: boxPath(box),
  fill: tone,
  stroke: null,
})

export const outlinedBox = (box: Box, width: number, dash: number | null = null): Mark => ({
  kind: 'path',
  d: boxPath(box),
  fill: null,
  stroke: { width, dash },
})
