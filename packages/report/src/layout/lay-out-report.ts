import { customerLanguages } from '@bayledger/wording/customer-languages'
import type { ReportContent } from '../content.ts'
import { printable } from '../fonts/printable.ts'
import type { Flow } from './flow.ts'
import { type Element, element, type Mark, rule } from './page-elements.ts'
import { layPageOne } from './page-one.ts'
import { paper, sheet, sizes } from './paper.ts'
import { textMark } from './paragraph.ts'
import { laySection } from './section.ts'

export type LaidReport = {
  readonly pages: number
  readonly root: Element
  /** The name of each child of `root`, by which a reader turns to it. */
  readonly bookmarks: readonly string[]
  /** What every page carries besides its text: the margin rule and the foot line. */
  readonly furnitureOf: (page: number) => readonly Mark[]
}

/** Places everything a report says on its pages; pure, the fonts' widths apart. */
export const layOutReport = (report: ReportContent): LaidReport => {
  const language = customerLanguages[report.language]
  const flow: Flow = { page: 2, y: sheet.top, language }
  const root = element('Document', [
    layPageOne(report),
    ...report.sections.map((section) => laySection(flow, section)),
  ])
  const pages = report.sections.length === 0 ? 1 : flow.page
  const bookmarks = [
    language.report.paper.pageOneBookmark,
    ...report.sections.map(({ title }) => printable(title)),
  ]
  return { pages, root, bookmarks, furnitureOf: (page) => pageFurniture(report, page, pages) }
}

const says = ({ language }: ReportContent) => customerLanguages[language].report.paper

const foot = { typeface: 'regular', size: sizes.small } as const

const pageFurniture = (report: ReportContent, page: number, pages: number): Mark[] => [
  rule(sheet.marginRule, 24, sheet.marginRule, paper.height - 24, 0.5),
  rule(sheet.marginRule + 2, 24, sheet.marginRule + 2, paper.height - 24, 0.5),
  rule(sheet.left, sheet.footer - 5, sheet.right, sheet.footer - 5, 0.5),
  textMark(
    says(report).foot({
      report: report.reportNumber,
      order: report.orderNumber,
      page,
      pages,
      composedAt: report.composedAtWords,
      timeZone: report.timeZone,
    }),
    sheet.left,
    sheet.footer,
    foot,
  ),
  textMark(
    says(report).ledgerFoot(report.head.seq, grouped(report.head.hash)),
    sheet.left,
    sheet.footer + 11,
    foot,
  ),
]

/** The first 16 characters of a hash in groups of four. */
export const grouped = (hash: string): string => (hash.slice(0, 16).match(/.{1,4}/g) ?? []).join(' ')
