import { english } from '@bayledger/wording/en/english'
import { spanish } from '@bayledger/wording/es/spanish'
import { describe, expect, it } from 'vitest'
import { runOutsideTool } from '../../../../tests/support/run-outside-tool.ts'
import { withFile } from '../../test-support/temporary-file.ts'
import { reportContext } from '../../test-support/worked-context.ts'
import { workedState } from '../../test-support/worked-state.ts'
import { composeReportContent } from '../compose-content.ts'
import { paper } from '../layout/paper.ts'
import { drawReport } from './draw-report.ts'

const long = (letters: string, count: number) => letters.repeat(count).slice(0, count)
const customer = long('Wolframhildegunde', 80)
const street = long('Mwendelinsgrabenweg', 80)
const vehicle = long('Wagonwideload', 80)
const told = long('mwhochgerechnetundwiederabgezogen', 200)

type Word = { readonly page: number; readonly text: string; readonly box: readonly number[] }

/** Every word of a report with its box, in points from the upper left corner, as poppler finds them. */
const wordsOf = (pdf: Uint8Array): Word[] =>
  withFile(pdf, (path) => runOutsideTool('pdftotext', ['-bbox', path, '-']).output)
    .split('<page ')
    .slice(1)
    .flatMap((page, index) =>
      [
        ...page.matchAll(/xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">(.*)<\/word>/g),
      ].map(([, ...found]) => ({
        page: index + 1,
        text: found[4] ?? '',
        box: found.slice(0, 4).map(Number),
      })),
    )

/** A word's box is as high as its line, which the next one may touch. */
const isOver = (one: Word, other: Word): boolean => {
  const [left = 0, top = 0, right = 0, bottom = 0] = one.box
  const [itsLeft = 0, itsTop = 0, itsRight = 0, itsBottom = 0] = other.box
  const height = Math.min(bottom - top, itsBottom - itsTop)
  return (
    one.page === other.page &&
    Math.min(right, itsRight) - Math.max(left, itsLeft) > 1 &&
    Math.min(bottom, itsBottom) - Math.max(top, itsTop) > height / 3
  )
}

describe.each([
  ['English', english],
  ['Spanish', spanish],
])('a report of the longest words, in %s', (_, language) => {
  const drawn = drawReport(
    composeReportContent(workedState, {
      ...reportContext,
      language,
      customerName: customer,
      vehicle: { ...reportContext.vehicle, description: vehicle },
      shop: { ...reportContext.shop, lines: [street] },
      texts: Object.fromEntries(Object.keys(reportContext.texts).map((key) => [key, told])),
    }),
  )

  it('holds them whole', async () => {
    const text = wordsOf(await drawn)
      .map((word) => word.text)
      .join('')
    for (const words of [street, vehicle, told]) expect(text).toContain(words)
  })

  it('keeps every word on its paper, and none over another', async () => {
    const words = wordsOf(await drawn)
    expect(words.length).toBeGreaterThan(500)
    const outside = words.filter(
      ({ box: [left = 0, top = 0, right = 0, bottom = 0] }) =>
        left < 18 || right > paper.width - 18 || top < 0 || bottom > paper.height,
    )
    expect(outside).toEqual([])
    const over = words.flatMap((one, index) =>
      words
        .slice(index + 1)
        .filter((other) => isOver(one, other))
        .map((other) => `page ${one.page}: "${one.text}" and "${other.text}"`),
    )
    expect(over).toEqual([])
  })
})
