import type { FoundPart, PageOne } from '../content.ts'
import { cellWords, figureMarks, layCell, widthOfFigure } from './cell.ts'
import { entryMark } from './entry-mark.ts'
import type { Flow } from './flow.ts'
import { content, element, furniture, type Item, type Mark, rule } from './page-elements.ts'
import { sheet, sheetWidth, sizes } from './paper.ts'
import { cutTo, lineHeight, lineMarks, linesOf, type Style, textMark } from './paragraph.ts'
import { shapeInset, shapeMarks, shapeOf } from './severity-shape.ts'

const says = ({ language }: Pick<Flow, 'language'>) => language.report.pageOne

const heading: Style = { typeface: 'bold', size: sizes.body }
const body: Style = { typeface: 'regular', size: sizes.body }
const strong: Style = { typeface: 'bold', size: sizes.lead }
const proofStyle: Style = { typeface: 'bold', size: 17 }

/** Points between the parts of page one. */
const partGap = 4

const title = (flow: Flow, words: string): Item => {
  const mark = textMark(words, sheet.left, flow.y, heading)
  flow.y += lineHeight(heading) + 1
  return element('H2', [content(1, [mark])])
}

/** The complaint in the customer's own words. */
export const layTold = (flow: Flow, { told }: PageOne, width: number, most: number): Item[] => {
  const items = [title(flow, says(flow).titles.told), ...entryMark(told.entry, 1, flow.y)]
  if (told.text.kind === 'gap') {
    const gap = layCell(told.text, width, body)
    items.push(element('P', [content(1, gap.marksAt(sheet.left, flow.y))]))
    flow.y += gap.height + partGap
    return items
  }
  const lines = cutTo(
    linesOf(says(flow).quoted(cellWords(told.text)), body, width),
    most,
    body,
    width,
    says(flow).further,
  )
  items.push(element('P', [content(1, lineMarks(lines, sheet.left, flow.y, body))]))
  flow.y += lines.length * lineHeight(body) + partGap
  return items
}

/** Each thing that was found, in its own shape with its own word: a danger and the light's cause are never one text. */
export const layFound = (flow: Flow, { found }: PageOne, width: number, most: number): Item[] => [
  title(flow, says(flow).titles.found),
  ...found.flatMap((part) => layPart(flow, part, width, most)),
]

const layPart = (flow: Flow, found: FoundPart, width: number, most: number): Item[] => {
  const items: Item[] = [...entryMark(found.entry, 1, flow.y)]
  const tone = shapeOf[found.severity] === 'solid-bar' ? 'paper' : 'ink'
  const x = sheet.left + shapeInset
  const inner = width - shapeInset - 4
  const style: Style = { ...strong, size: 10.5, tone }
  const lines = cutTo(
    linesOf(`${found.word}: ${found.sentence}`, style, inner),
    most,
    style,
    inner,
    says(flow).further,
  )
  const sentenceHeight = lines.length * lineHeight(style)
  const proof = found.proof ? layProof(found.proof, inner, most < 4 ? strong : proofStyle) : null
  const then = found.remedy.flatMap((text) => linesOf(text, body, inner))
  const thenHeight = then.length * lineHeight(body)
  const height = 4 + sentenceHeight + (proof ? proof.height + 2 : 0) + thenHeight + 3
  items.push(
    furniture(1, shapeMarks(found.severity, { x: sheet.left, y: flow.y, width, height })),
    element('P', [content(1, lineMarks(lines, x, flow.y + 3, style))]),
  )
  if (proof) {
    const marks = proof
      .marksAt(x, flow.y + 4 + sentenceHeight)
      .map((mark): Mark => (mark.kind === 'text' ? { ...mark, tone } : mark))
    items.push(element('P', [content(1, marks)]))
  }
  if (then.length > 0)
    items.push(
      element('P', [content(1, lineMarks(then, x, flow.y + height - thenHeight - 2, { ...body, tone }))]),
    )
  flow.y += height + 4
  return items
}

const layProof = ({ figure, says }: NonNullable<FoundPart['proof']>, width: number, style: Style) => {
  const figureWidth = widthOfFigure(figure.value, figure.unit, style) + 8
  const lines = linesOf(says, body, width - figureWidth).slice(0, 2)
  const height = Math.max(lineHeight(style), lines.length * lineHeight(body))
  const dropped = lines.length === 1 ? 0.9 * (style.size - body.size) : 0
  return {
    height,
    marksAt: (x: number, top: number): Mark[] => [
      ...figureMarks(figure.value, figure.unit, x, top, style),
      ...lineMarks(lines, x + figureWidth, top + dropped, body),
    ],
  }
}

/** What was done, and last what it cost: that is never left to a later page. */
export const layDid = (flow: Flow, { did }: PageOne, width: number, most: number): Item[] => [
  title(flow, says(flow).titles.did),
  ...layList(flow, did.slice(0, -1), width, most, did.slice(-1)),
]

export const layNotDone = (flow: Flow, { notDone }: PageOne, width: number, most: number): Item[] => [
  title(flow, says(flow).titles.notDone),
  ...layList(
    flow,
    notDone.length === 0
      ? [says(flow).nothingRefused]
      : notDone.map((line) => `${line.answer}: ${line.title}`),
    width,
    most,
  ),
]

/**
 * Lines with a short dash, each its own list item, at most `most` lines with those of `last`, which always has its place;
 * what does not fit is counted, never dropped in silence.
 */
const layList = (
  flow: Flow,
  texts: readonly string[],
  width: number,
  most: number,
  last: readonly string[] = [],
): Item[] => {
  const list = element('L')
  const wrapped = (text: string) => linesOf(text, body, width - inset)
  const room = most - last.flatMap(wrapped).length
  let used = 0
  for (const [index, text] of texts.entries()) {
    const left = texts.length - index
    const lines = wrapped(text)
    if (used + lines.length > room - (left > 1 ? 1 : 0) && used > 0) {
      const more = says(flow).more(left)
      list.children.push(
        element('LI', [element('LBody', [content(1, [textMark(more, sheet.left + inset, flow.y, body)])])]),
      )
      flow.y += lineHeight(body)
      break
    }
    layListLine(flow, list, lines)
    used += lines.length
  }
  for (const text of last) layListLine(flow, list, wrapped(text))
  flow.y += partGap
  return [list]
}

const inset = 10

const layListLine = (flow: Flow, list: ReturnType<typeof element>, lines: readonly string[]): void => {
  const middle = flow.y + body.size * 0.66
  list.children.push(
    furniture(1, [rule(sheet.left + 1, middle, sheet.left + 6, middle, 0.9)]),
    element('LI', [element('LBody', [content(1, lineMarks(lines, sheet.left + inset, flow.y, body))])]),
  )
  flow.y += lines.length * lineHeight(body)
}

/** "Is it fixed?" between two heavy rules. */
export const layFixed = (flow: Flow, { fixed }: PageOne, width: number): Item[] => {
  const right = sheet.left + width
  const above = rule(sheet.left, flow.y, right, flow.y, 1.2)
  flow.y += 4
  const heading = title(flow, says(flow).titles.fixed)
  const lines = linesOf(`${fixed.word}: ${fixed.words}`, strong, width)
  const marks = lineMarks(lines, sheet.left, flow.y, strong)
  flow.y += lines.length * lineHeight(strong) + 3
  return [
    furniture(1, [above]),
    heading,
    element('P', [content(1, marks)]),
    furniture(1, [rule(sheet.left, flow.y, right, flow.y, 1.2)]),
  ]
}

/** Never cut: these lines appear nowhere else. */
export const layNext = (flow: Flow, { next }: PageOne): Item[] => {
  flow.y += partGap
  return [title(flow, says(flow).titles.next), ...layList(flow, next, sheetWidth, Number.POSITIVE_INFINITY)]
}
