import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { create, type Font } from 'fontkit'
import { describe, expect, it } from 'vitest'
import { facesOf, typefaces } from './faces.ts'
import { laidOnce } from './laid-once.ts'
import { featuresFor } from './runs.ts'
import { sfntOfWoff } from './sfnt-of-woff.ts'

const file = '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff'
const bytes = sfntOfWoff(readFileSync(fileURLToPath(import.meta.resolve(file))))
const newFont = (): Font => create(bytes) as Font

const texts = [
  'Right front tire: 24.3 psi, should be 33.0 psi',
  'AVA To, Tamber Street Tire & Wheel',
  'Presión de las llantas — ¿qué sigue?',
  'e\u0301 and é',
  '',
]

/** A layout as a document reads it. */
const readOf = (font: Font, text: string) => {
  const { glyphs, positions, advanceWidth } = font.layout(text, featuresFor(text))
  return {
    glyphs: glyphs.map(({ id, advanceWidth: width, codePoints }) => ({ id, width, codePoints })),
    positions: positions.map((position) => ({ ...position })),
    advanceWidth,
  }
}

describe('a font that keeps its layouts', () => {
  it.each(texts)('lays out %j as fontkit does', (text) => {
    const font = laidOnce(newFont)
    const asFontkit = readOf(newFont(), text)
    expect(readOf(font, text)).toEqual(asFontkit)
    expect(readOf(font, text)).toEqual(asFontkit)
  })

  it('keeps its layout though a document scales the positions that it got', () => {
    const font = laidOnce(newFont)
    const first = font.layout('31.5 psi', ['tnum'])
    const { advanceWidth } = first
    for (const position of first.positions) position.xAdvance *= 2
    expect(first.advanceWidth).toBe(advanceWidth * 2)
    expect(font.layout('31.5 psi', ['tnum']).advanceWidth).toBe(advanceWidth)
  })

  it('names the characters of the text itself, whatever was joined before', () => {
    const font = laidOnce(newFont)
    for (const text of ['i\u0301', 'ı', 'e\u0301', 'é'])
      expect(readOf(font, text)).toEqual(readOf(newFont(), text))
  })

  it.each(typefaces)('needs that no two characters of %s are drawn alike', (typeface) => {
    for (const { name, font } of facesOf(typeface)) {
      const glyphs = font.characterSet.map((code) => font.glyphForCodePoint(code).id)
      expect(new Set(glyphs).size, name).toBe(glyphs.length)
    }
  })
})
