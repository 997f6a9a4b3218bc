import { severities } from '@bayledger/wording/en/severities'
import { describe, expect, it } from 'vitest'
import { finishedOrder } from '../../test-support/finished-order.ts'
import type { ReportContent, Severity } from '../content.ts'
import { layOutReport } from './lay-out-report.ts'
import type { Content, Element, Furniture, Item, Mark } from './page-elements.ts'
import { paper, sheet } from './paper.ts'
import { linesOf } from './paragraph.ts'
import { shapeOf } from './severity-shape.ts'

const laid = layOutReport(finishedOrder)

const leavesOf = (item: Item): (Content | Furniture)[] =>
  item.kind === 'element' ? item.children.flatMap(leavesOf) : [item]

const elementsOf = (item: Item): Element[] =>
  item.kind === 'element' ? [item, ...item.children.flatMap(elementsOf)] : []

const marksOf = (report: ReturnType<typeof layOutReport>): Mark[] => [
  ...leavesOf(report.root).flatMap(({ marks }) => marks),
  ...Array.from({ length: report.pages }, (_, index) => report.furnitureOf(index + 1)).flat(),
]

/** Every x and y of a mark: a text's start, the corners of a picture or of a path. */
const pointsOf = (mark: Mark): [number, number][] => {
  if (mark.kind === 'text') return [[mark.x, mark.baseline]]
  if (mark.kind === 'image')
    return [
      [mark.x, mark.y],
      [mark.x + mark.width, mark.y + mark.height],
    ]
  const numbers = (mark.d.match(/-?\d+(\.\d+)?/g) ?? []).map(Number)
  return numbers.flatMap((x, index) => (index % 2 === 0 ? [[x, numbers[index + 1] ?? 0]] : []))
}

const roles = (report: ReturnType<typeof layOutReport>) => elementsOf(report.root).map(({ role }) => role)

describe('a laid out report', () => {
  it('places everything inside the paper', () => {
    for (const mark of marksOf(laid))
      for (const [x, y] of pointsOf(mark)) {
        expect(x).toBeGreaterThanOrEqual(24)
        expect(x).toBeLessThanOrEqual(paper.width - 24)
        expect(y).toBeGreaterThanOrEqual(20)
        expect(y).toBeLessThanOrEqual(paper.height - 18)
      }
  })

  it('never goes back to an earlier page in reading order', () => {
    const pages = leavesOf(laid.root).map(({ page }) => page)
    expect(pages).toEqual([...pages].sort((one, other) => one - other))
    expect(pages.at(-1)).toBe(laid.pages)
  })

  it('begins with the one question, as the only heading of the first rank', () => {
    const [first] = elementsOf(laid.root).filter(({ role }) => role === 'H1')
    expect(roles(laid).filter((role) => role === 'H1')).toHaveLength(1)
    expect(leavesOf(first ?? laid.root)[0]?.marks[0]).toMatchObject({ text: 'Can I drive it? ' })
  })

  it('gives every figure a description and a box, and every heading cell its direction', () => {
    for (const { role, alt, box, scope } of elementsOf(laid.root)) {
      if (role === 'Figure') {
        expect(alt).toBeTruthy()
        expect(box).toBeTruthy()
      }
      if (role === 'TH') expect(scope).toBeTruthy()
    }
    expect(roles(laid)).toEqual(expect.arrayContaining(['Figure', 'TH', 'Table', 'H2', 'H3', 'L']))
  })

  it('gives each row of a table as many cells as the table has columns', () => {
    for (const table of elementsOf(laid.root).filter(({ role }) => role === 'Table')) {
      const rows = elementsOf(table).filter(({ role }) => role === 'TR')
      const counts = rows.map(
        (row) => elementsOf(row).filter(({ role }) => role === 'TH' || role === 'TD').length,
      )
      expect(new Set(counts).size).toBe(1)
    }
  })

  it('writes what a reader needs in 10 points or more', () => {
    const small = leavesOf(laid.root)
      .filter(({ kind }) => kind === 'content')
      .flatMap(({ marks }) => marks)
      .flatMap((mark) => (mark.kind === 'text' && mark.size < 8 ? [mark.text] : []))
    expect(small).toEqual([])
    const body = marksOf(laid).filter((mark) => mark.kind === 'text' && mark.size >= 10)
    expect(body.length).toBeGreaterThan(100)
  })

  it('repeats a table’s heading on the next page as furniture, so that it is read once', () => {
    const many: ReportContent = {
      ...finishedOrder,
      sections: [
        {
          title: 'Long',
          blocks: [
            {
              kind: 'table',
              caption: 'Rows',
              columns: [
                { title: 'Line', share: 1 },
                { title: 'Figure', share: 1 },
              ],
              rows: Array.from({ length: 90 }, (_, index) => ({
                entry: index + 1,
                cells: [
                  { kind: 'words' as const, text: `row ${index}` },
                  { kind: 'figure' as const, value: `${index}.5`, unit: 'psi' },
                ],
              })),
            },
          ],
        },
      ],
    }
    const long = layOutReport(many)
    const headings = leavesOf(long.root).filter(({ marks }) =>
      marks.some((mark) => mark.kind === 'text' && mark.text === 'Line'),
    )
    expect(long.pages).toBeGreaterThan(3)
    expect(headings.filter(({ kind }) => kind === 'content')).toHaveLength(1)
    expect(headings.filter(({ kind }) => kind === 'furniture')).toHaveLength(long.pages - 2)
  })
})

describe('page one', () => {
  const withTexts = (told: string, lines: number): ReportContent => ({
    ...finishedOrder,
    pageOne: {
      ...finishedOrder.pageOne,
      told: { text: { kind: 'words', text: told }, entry: 2 },
      found: finishedOrder.pageOne.found.map((part) => ({
        ...part,
        sentence: 'A long sentence about the cause. '.repeat(6),
      })),
      did: Array.from(
        { length: lines },
        () => 'Something that was done and takes nearly two lines of the column to say.',
      ),
      notDone: Array.from({ length: 2 * lines }, (_, index) => ({
        title: `Proposal ${index} with a title of some length`,
        answer: 'Not today, until Apr 1, 2026',
      })),
    },
  })

  it('keeps to one page above its foot however much was said, done and declined', () => {
    for (const report of [
      withTexts('told '.repeat(400), 4),
      withTexts('x', 1),
      withTexts('told '.repeat(60), 3),
    ]) {
      const page = layOutReport(report).root.children[0]
      const leaves = page ? leavesOf(page) : []
      expect(leaves.every(({ page: number }) => number === 1)).toBe(true)
      const next = elementsOf(page ?? laid.root).findLast(({ role }) => role === 'L')
      const lowest = Math.max(
        ...leavesOf(next ?? laid.root)
          .flatMap(({ marks }) => marks.flatMap(pointsOf))
          .map(([, y]) => y),
      )
      expect(lowest).toBeLessThan(sheet.bottom - 62)
    }
  })

  it('says where the rest of a text is when it is cut', () => {
    const texts = marksOf(layOutReport(withTexts('told '.repeat(400), 4))).flatMap((mark) =>
      mark.kind === 'text' ? [mark.text] : [],
    )
    expect(texts.some((text) => text.endsWith('… (the whole of it further on)'))).toBe(true)
    expect(texts.some((text) => /^and \d+ more, further on$/.test(text))).toBe(true)
  })
})

it('six shapes grade all eleven severities, each with its word', () => {
  const every = Object.keys(severities) as Severity[]
  expect(every).toHaveLength(11)
  expect(new Set(every.map((severity) => shapeOf[severity])).size).toBe(6)
})

it('a column is wide enough for each word of its heading, at the cost of those that have room', () => {
  const titles = ['Se movieron', 'Llave']
  const table = {
    kind: 'table',
    caption: 'Rows',
    columns: titles.map((title, index) => ({ title, share: index === 0 ? 1 : 19 })),
    rows: [{ entry: 1, cells: titles.map((title) => ({ kind: 'words' as const, text: title })) }],
  } as const
  const { root } = layOutReport({ ...finishedOrder, sections: [{ title: 'Narrow', blocks: [table] }] })
  const texts = leavesOf(root).flatMap(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
  )
  expect(texts.filter((text) => text.startsWith('movieron'))).toHaveLength(2)
})

it('lines keep every word in order and stay within their width', () => {
  const style = { typeface: 'regular', size: 10 } as const
  const text =
    'The quick brown fox 12.5 psi jumps over a-very-long-word-that-has-to-be-cut-somewhere-in-the-middle again'
  expect(linesOf(text, style, 90).join('')).toBe(text)
})
