import type { Block, FindingLine, Section } from '../content.ts'
import { entryMark } from './entry-mark.ts'
import { ensure, type Flow, flowLines } from './flow.ts'
import { content, type Element, element, furniture, type Item, rule } from './page-elements.ts'
import { sheet, sheetWidth, sizes } from './paper.ts'
import { lineHeight, lineMarks, linesOf, type Style } from './paragraph.ts'
import { layPictures } from './pictures.ts'
import { shapeInset, shapeMarks, shapeOf } from './severity-shape.ts'
import { layTable } from './table.ts'

const title: Style = { typeface: 'bold', size: sizes.title }
const caption: Style = { typeface: 'bold', size: sizes.lead }
const body: Style = { typeface: 'regular', size: sizes.body }
const strong: Style = { typeface: 'bold', size: sizes.body }

/** Space that a title needs below it, so that it is never alone at the foot of a page. */
const company = { text: 40, table: 96 } as const

export const laySection = (flow: Flow, section: Section): Element => {
  if (flow.y > sheet.top) flow.y += 10
  ensure(flow, lineHeight(title) + company[section.blocks[0]?.kind === 'table' ? 'table' : 'text'])
  const heading = element('H2')
  flowLines(flow, heading, linesOf(section.title, title, sheetWidth), sheet.left, title)
  flow.y += 2
  return element('Sect', [
    heading,
    furniture(flow.page, [rule(sheet.left, flow.y, sheet.right, flow.y, 1.2)]),
    ...section.blocks.flatMap((block) => {
      flow.y += 4
      return layBlock(flow, block)
    }),
  ])
}

const layBlock = (flow: Flow, block: Block): Item[] => {
  switch (block.kind) {
    case 'paragraph': {
      const paragraph = element('P')
      ensure(flow, lineHeight(body))
      const mark = entryMark(block.entry, flow.page, flow.y)
      flowLines(flow, paragraph, linesOf(block.text, body, sheetWidth), sheet.left, body)
      return [...mark, paragraph]
    }
    case 'findings':
      return block.findings.flatMap((finding) => layFinding(flow, finding))
    case 'pictures':
      return layPictures(flow, block.pictures)
    case 'table': {
      const heading = element('H3')
      ensure(flow, lineHeight(caption) + company.text)
      flowLines(flow, heading, linesOf(block.caption, caption, sheetWidth), sheet.left, caption)
      flow.y += 2
      return [heading, layTable(flow, block.columns, block.rows)]
    }
  }
}

/** One finding in its shape: the word, the sentence that the customer reads, the reasons with their values. */
const layFinding = (flow: Flow, finding: FindingLine): Item[] => {
  const onBar = shapeOf[finding.severity] === 'solid-bar'
  const tone = onBar ? 'paper' : 'ink'
  const width = sheetWidth - shapeInset - 4
  const lead = linesOf(`${flow.language.severities[finding.severity]}. ${finding.sentence}`, strong, width)
  const reasons = finding.reasons.flatMap((reason) => linesOf(reason, body, width))
  const height = (lead.length + reasons.length) * lineHeight(body) + 6
  ensure(flow, height)
  const top = flow.y
  flow.y += height + 4
  const x = sheet.left + shapeInset
  return [
    furniture(flow.page, shapeMarks(finding.severity, { x: sheet.left, y: top, width: sheetWidth, height })),
    element('P', [
      content(flow.page, [
        ...lineMarks(lead, x, top + 3, { ...strong, tone }),
        ...lineMarks(reasons, x, top + 3 + lead.length * lineHeight(strong), { ...body, tone }),
      ]),
    ]),
  ]
}
