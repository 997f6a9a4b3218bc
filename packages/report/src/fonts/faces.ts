import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { create, type Font } from 'fontkit'
import { laidOnce } from './laid-once.ts'
import { sfntOfWoff } from './sfnt-of-woff.ts'

export type Typeface = 'regular' | 'bold' | 'mono' | 'mono-bold'

/** One font file: a typeface is cut into a Latin and an extended Latin file by its publisher. */
export type Face = { readonly name: string; readonly font: Font }

const folders: Readonly<Record<Typeface, { readonly family: 'next' | 'mono'; readonly weight: number }>> = {
  regular: { family: 'next', weight: 400 },
  bold: { family: 'next', weight: 700 },
  mono: { family: 'mono', weight: 400 },
  'mono-bold': { family: 'mono', weight: 700 },
}

const loaded = new Map<Typeface, readonly Face[]>()

/** The files of a typeface, in the order in which a glyph is looked for. Read once a process. */
export const facesOf = (typeface: Typeface): readonly Face[] => {
  const known = loaded.get(typeface)
  if (known) return known
  const { family, weight } = folders[typeface]
  const faces = ['latin', 'latin-ext'].map((cut) => {
    const base = `atkinson-hyperlegible-${family}`
    const file = `@fontsource/${base}/files/${base}-${cut}-${weight}-normal.woff`
    const bytes = sfntOfWoff(readFileSync(fileURLToPath(import.meta.resolve(file))))
    const newFont = (): Font => {
      const font = create(bytes)
      if (!('layout' in font)) throw new Error(`${file} holds a collection of fonts where one is needed.`)
      return font
    }
    return { name: `${family}-${cut}-${weight}`, font: laidOnce(newFont) }
  })
  loaded.set(typeface, faces)
  return faces
}

export const typefaces = Object.keys(folders) as Typeface[]
