import { customerLanguages } from '@bayledger/wording/customer-languages'
import PDFDocument from 'pdfkit'
import type { ReportContent } from '../content.ts'
import { printable } from '../fonts/printable.ts'
import { layOutReport } from '../layout/lay-out-report.ts'
import type { Box, Element, Item } from '../layout/page-elements.ts'
import { drawMark, registerFaces } from './draw-marks.ts'

/**
 * Draws a report as a tagged PDF with embedded fonts. The same content gives the same bytes: dates and
 * identifiers come from it, never from a clock or from chance.
 */
export const drawReport = (report: ReportContent): Promise<Uint8Array> => {
  const laid = layOutReport(report)
  const language = customerLanguages[report.language]
  const pdf = new PDFDocument({
    size: 'letter',
    margin: 0,
    autoFirstPage: false,
    pdfVersion: '1.7',
    tagged: true,
    lang: language.locale,
    displayTitle: true,
    fontLayoutCache: true,
    info: {
      Title: printable(language.report.paper.title(report.reportNumber, report.orderNumber)),
      Author: printable(report.pageOne.shop.name),
      Creator: 'Bayledger',
      Producer: 'Bayledger',
      CreationDate: new Date(report.composedAt),
    },
  })
  const bytes = collect(pdf)
  registerFaces(pdf)
  withEscapedMetadata(pdf)

  let page = 0
  const turnTo = (wanted: number): void => {
    while (page < wanted) {
      page += 1
      pdf.addPage()
      pdf.markContent('Artifact', { type: 'Pagination' })
      for (const mark of laid.furnitureOf(page)) drawMark(pdf, mark)
      pdf.endMarkedContent()
    }
  }
  const root = pdf.struct('Document')
  pdf.addStructure(root)
  for (const [index, item] of laid.root.children.entries()) {
    turnTo(firstPageOf(item) ?? 0)
    pdf.outline.addItem(laid.bookmarks[index] ?? '')
    drawItem(pdf, root, 'Document', item, turnTo)
  }
  turnTo(laid.pages)
  root.end()
  pdf.end()
  return bytes
}

const drawItem = (
  pdf: PDFKit.PDFDocument,
  parent: PDFKit.PDFStructureElement,
  role: string,
  item: Item,
  turnTo: (page: number) => void,
): void => {
  if (item.kind === 'element') {
    turnTo(firstPageOf(item) ?? 0)
    const node = pdf.struct(item.role, optionsOf(item))
    parent.add(node)
    for (const child of item.children) drawItem(pdf, node, item.role, child, turnTo)
    node.end()
    return
  }
  if (item.marks.length === 0) return
  turnTo(item.page)
  if (item.kind === 'content') parent.add(pdf.markStructureContent(role))
  else pdf.markContent('Artifact', { type: 'Layout' })
  for (const mark of item.marks) drawMark(pdf, mark)
  pdf.endMarkedContent()
}

const optionsOf = ({ alt, scope, box }: Element) => ({
  ...(alt === null ? {} : { alt: printable(alt) }),
  ...(scope === null ? {} : { scope }),
  ...(box === null ? {} : { bbox: corners(box) }),
})

const corners = ({ x, y, width, height }: Box): [number, number, number, number] => [
  x,
  y,
  x + width,
  y + height,
]

const firstPageOf = (item: Item): number | null =>
  item.kind === 'element' ? (item.children.map(firstPageOf).find((page) => page !== null) ?? null) : item.page

/**
 * pdfkit writes title and author into the XML metadata as they are. By then they are already in the document's own
 * information, so they are escaped for XML there and only there.
 */
const withEscapedMetadata = (pdf: PDFKit.PDFDocument): void => {
  const inside = pdf as PDFKit.PDFDocument & { endMetadata: () => void }
  const end = inside.endMetadata
  inside.endMetadata = () => {
    for (const key of ['Title', 'Author'] as const) pdf.info[key] = inXml(pdf.info[key] ?? '')
    end.call(pdf)
  }
}

const inXml = (text: string): string =>
  text.replace(/[<>&"']/g, (character) => `&#${character.codePointAt(0) ?? 0};`)

const collect = (pdf: PDFKit.PDFDocument): Promise<Uint8Array> =>
  new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = []
    pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk))
    pdf.on('end', () => resolve(Buffer.concat(chunks)))
    pdf.on('error', reject)
  })
