import type { PageOne } from '../content.ts'
import { widthOf } from '../fonts/runs.ts'
import { layCell } from './cell.ts'
import type { Flow } from './flow.ts'
import { content, element, filledBox, furniture, type Item, rule } from './page-elements.ts'
import { sheet, sheetWidth, sizes } from './paper.ts'
import { lineHeight, lineMarks, linesOf, type Style, textMark } from './paragraph.ts'

const question: Style = { typeface: 'bold', size: sizes.lead }
const answer: Style = { typeface: 'bold', size: sizes.answer }
const shopName: Style = { typeface: 'bold', size: sizes.lead }
const small: Style = { typeface: 'regular', size: 8.5 }
const body: Style = { typeface: 'regular', size: sizes.body }

/** The first line of the report: the question and its answer; a "No" is white on a solid bar. */
export const layCanDrive = (flow: Flow, { canDrive }: PageOne): Item[] => {
  const asking = flow.language.report.pageOne.titles.canDrive
  const stop = canDrive.answer === 'do-not-drive'
  const tone = stop ? 'paper' : 'ink'
  const inset = stop ? 8 : 0
  const asked = widthOf(asking, question.typeface, question.size) + 12
  const lines = linesOf(canDrive.words, answer, sheetWidth - 2 * inset - asked)
  const height = lines.length * lineHeight(answer) + (stop ? 8 : 2)
  const top = flow.y + (stop ? 3 : 0)
  const x = sheet.left + inset
  const bar = stop ? [filledBox({ x: sheet.left, y: flow.y, width: sheetWidth, height })] : []
  flow.y += height + 4
  return [
    furniture(1, bar),
    element('H1', [
      content(1, [
        textMark(`${asking} `, x, top + 0.96 * (answer.size - question.size), { ...question, tone }),
        ...lineMarks(lines, x + asked, top, { ...answer, tone }),
      ]),
    ]),
    furniture(1, [rule(sheet.left, flow.y, sheet.right, flow.y, 1.2)]),
  ]
}

export const layShop = (flow: Flow, { shop }: PageOne): Item[] => {
  flow.y += 4
  const named = widthOf(shop.name, shopName.typeface, shopName.size) + 10
  const lines = linesOf(shop.lines.join(' · '), small, sheetWidth - named)
  const marks = [
    textMark(`${shop.name} `, sheet.left, flow.y, shopName),
    ...lineMarks(lines, sheet.left + named, flow.y + 0.96 * (shopName.size - small.size), small),
  ]
  flow.y += Math.max(lineHeight(shopName), lines.length * lineHeight(small) + 3) + 3
  return [element('P', [content(1, marks)])]
}

/** Four across; the third and fourth column hold the longer words (date, vehicle, mileage). */
const factShares = [0.17, 0.19, 0.3, 0.34] as const
const factGap = 8

/** Order, report, date, vehicle, plate, VIN and odometer, each under its label. */
export const layFacts = (flow: Flow, { facts }: PageOne): Item[] => {
  const items: Item[] = [furniture(1, [rule(sheet.left, flow.y, sheet.right, flow.y)])]
  for (let start = 0; start < facts.length; start += factShares.length) {
    const top = flow.y + 3
    let x: number = sheet.left
    let tallest = 0
    for (const [column, { label, value }] of facts.slice(start, start + factShares.length).entries()) {
      const width = (factShares[column] ?? 0) * sheetWidth
      const cell = layCell(value, width - factGap, body)
      const marks = [textMark(`${label} `, x, top, small), ...cell.marksAt(x, top + lineHeight(small))]
      items.push(element('P', [content(1, marks)]))
      tallest = Math.max(tallest, cell.height)
      x += width
    }
    flow.y = top + lineHeight(small) + tallest + 3
    items.push(furniture(1, [rule(sheet.left, flow.y, sheet.right, flow.y)]))
  }
  return items
}
