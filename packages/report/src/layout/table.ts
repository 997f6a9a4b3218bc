import type { Cell, Column, Row } from '../content.ts'
import { layCell, wholePartWidth } from './cell.ts'
import { entryMark } from './entry-mark.ts'
import { ensure, type Flow } from './flow.ts'
import { content, type Element, element, furniture, type Mark, rule } from './page-elements.ts'
import { sheet, sheetWidth, sizes } from './paper.ts'
import { type Style, widestWord } from './paragraph.ts'

const body: Style = { typeface: 'regular', size: sizes.body }
const head: Style = { typeface: 'bold', size: sizes.body }
const gutter = 6
const rowPadding = 2.6

/**
 * A ruled table across the sheet, its first column naming each row. The heading is repeated on every further
 * page, as furniture there, so that a reader hears it once.
 */
export const layTable = (
  flow: Flow,
  columns: readonly Column[],
  rows: readonly Row[],
  padding = rowPadding,
): Element => {
  const edges = edgesOf(columns)
  const headings = columns.map(({ title }, index) =>
    layCell({ kind: 'words', text: title }, widthAt(edges, index), head),
  )
  const headingHeight = Math.max(...headings.map(({ height }) => height)) + 2 * padding
  const digits = columns.map((_, index) => widestWholePart(rows.map(({ cells }) => cells[index])))
  const laidRows = rows.map((row) => layRow(row, edges, digits, padding))

  ensure(flow, headingHeight + (laidRows[0]?.height ?? 0))
  const table = element('Table')
  const headingMarks = (): Mark[][] =>
    headings.map((heading, index) => [...heading.marksAt(edges[index] ?? 0, flow.y + padding)])
  table.children.push(
    element(
      'TR',
      headingMarks().map((marks) => element('TH', [content(flow.page, marks)], { scope: 'Column' })),
    ),
    headingRules(flow, headingHeight),
  )
  flow.y += headingHeight

  for (const row of laidRows) {
    if (ensure(flow, row.height)) {
      table.children.push(furniture(flow.page, headingMarks().flat()), headingRules(flow, headingHeight))
      flow.y += headingHeight
    }
    table.children.push(row.elementAt(flow.page, flow.y))
    flow.y += row.height
    table.children.push(furniture(flow.page, [rule(sheet.left, flow.y, sheet.right, flow.y, 0.35)]))
  }
  return table
}

const edgesOf = (columns: readonly Column[]): number[] => {
  let x: number = sheet.left
  return [
    x,
    ...widthsOf(columns).map((width) => {
      x += width
      return x
    }),
  ]
}

/** By the columns' shares. One that is too narrow for a word of its heading takes the room from those that have some to spare. */
const widthsOf = (columns: readonly Column[]): number[] => {
  const shares = columns.reduce((sum, { share }) => sum + share, 0)
  const room = columns.map(({ share, title }) => {
    const width = (share / shares) * sheetWidth
    return { width, spare: width - widestWord(title, head) - gutter }
  })
  const needed = room.reduce((sum, { spare }) => sum + Math.max(0, -spare), 0)
  const there = room.reduce((sum, { spare }) => sum + Math.max(0, spare), 0)
  const moved = Math.min(needed, there)
  return room.map(({ width, spare }) =>
    moved === 0 ? width : width - spare * (moved / (spare < 0 ? needed : there)),
  )
}

const widthAt = (edges: readonly number[], index: number): number =>
  (edges[index + 1] ?? 0) - (edges[index] ?? 0) - gutter

const widestWholePart = (cells: readonly (Cell | undefined)[]): number =>
  Math.max(0, ...cells.map((cell) => (cell?.kind === 'figure' ? wholePartWidth(cell.value, body) : 0)))

const layRow = (row: Row, edges: readonly number[], digits: readonly number[], padding: number) => {
  const cells = row.cells.map((cell, index) =>
    layCell(cell, widthAt(edges, index), index === 0 ? head : body, digits[index]),
  )
  return {
    height: Math.max(...cells.map(({ height }) => height)) + 2 * padding,
    elementAt: (page: number, top: number): Element =>
      element('TR', [
        ...cells.map((cell, index) =>
          element(
            index === 0 ? 'TH' : 'TD',
            [content(page, cell.marksAt(edges[index] ?? 0, top + padding))],
            index === 0 ? { scope: 'Row' } : {},
          ),
        ),
        ...entryMark(row.entry, page, top + padding),
      ]),
  }
}

const headingRules = ({ page, y }: Flow, height: number) =>
  furniture(page, [
    rule(sheet.left, y, sheet.right, y, 1),
    rule(sheet.left, y + height, sheet.right, y + height, 0.8),
  ])
