import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

// Contrast as WCAG 2.2 defines it (w3.org/TR/WCAG22/#dfn-contrast-ratio, #dfn-relative-luminance).
const sheet = readFileSync(new URL('./tokens.css', import.meta.url), 'utf8')
const looks = ['sheet', 'dark-bay', 'bright-apron']
const texts = [
  ['ink', 'paper'],
  ['ink', 'field'],
  ['ink', 'tint'],
  ['quiet', 'paper'],
  ['quiet', 'field'],
  ['quiet', 'tint'],
  ['accent', 'paper'],
  ['accent', 'field'],
  ['accent', 'tint'],
  ['on-accent', 'accent'],
  ['on-bar', 'bar'],
] as const

it('the customer’s page is as large as their browser is set to show text (WCAG 2.2, 1.4.4)', () => {
  const page = readFileSync(new URL('../faces/customer/customer.css', import.meta.url), 'utf8')
  const sizes = [...page.matchAll(/--text-\w+: ([^;]+);/g)].map(([, size]) => size)
  expect(sizes.length).toBeGreaterThan(4)
  expect(sizes.filter((size) => !/^[\d.]+(rem|%)$/.test(size ?? ''))).toEqual([])
})

describe.each(looks)('the look %s', (look) => {
  const colors = colorsOf(look)

  it.each(texts)('shows %s on %s at 7:1 or better', (front, back) => {
    expect(contrast(color(colors, front), color(colors, back))).toBeGreaterThanOrEqual(7)
  })

  it('draws the edges of controls at 3:1 or better', () => {
    for (const back of ['paper', 'field', 'tint']) {
      expect(contrast(color(colors, 'rule-strong'), color(colors, back))).toBeGreaterThanOrEqual(3)
    }
  })
})

it('knows every look that the stylesheet declares', () => {
  expect([...sheet.matchAll(/\[data-look="([\w-]+)"\]/g)].map((match) => match[1])).toEqual(looks)
})

it('computes 21:1 for black on white, and 4.54:1 for #767676 on white, as WCAG says', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5)
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2)
})

function colorsOf(look: string): Map<string, string> {
  const block = sheet.match(new RegExp(`\\[data-look="${look}"\\] \\{([^}]*)\\}`))?.[1]
  if (block === undefined) throw new Error(`tokens.css has no look ${look}`)
  return new Map(
    [...block.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, name = '', hex = '']) => [name, hex]),
  )
}

function color(colors: Map<string, string>, name: string): string {
  const hex = colors.get(name)
  if (hex === undefined) throw new Error(`No color ${name} in this look`)
  return hex
}

function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a)
  return (light + 0.05) / (dark + 0.05)
}

function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}
