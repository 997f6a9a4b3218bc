import PDFDocument from 'pdfkit'
import type { ReportContent } from '../src/content.ts'
import { drawMark, registerFaces } from '../src/drawing/draw-marks.ts'
import { layOutReport } from '../src/layout/lay-out-report.ts'
import type { Item } from '../src/layout/page-elements.ts'

type Placed = Extract<Item, { readonly page: number }>

/** Everything on the pages, laid out beforehand, so that only pdfkit's own work is left, without tags. */
export const drawWithPdfkitAlone = (content: ReportContent): (() => Promise<void>) => {
  const laid = layOutReport(content)
  const placed = laid.root.children.flatMap(placedIn)
  return async () => {
    const pdf = new PDFDocument({ size: 'letter', margin: 0, autoFirstPage: false, fontLayoutCache: true })
    const ended = new Promise<void>((resolve, reject) => {
      pdf.on('data', () => undefined)
      pdf.on('end', resolve)
      pdf.on('error', reject)
    })
    registerFaces(pdf)
    for (let page = 1; page <= laid.pages; page += 1) {
      pdf.addPage()
      for (const mark of laid.furnitureOf(page)) drawMark(pdf, mark)
      for (const item of placed.filter((one) => one.page === page))
        for (const mark of item.marks) drawMark(pdf, mark)
    }
    pdf.end()
    await ended
  }
}

const placedIn = (item: Item): Placed[] =>
  item.kind === 'element' ? item.children.flatMap(placedIn) : [item]
