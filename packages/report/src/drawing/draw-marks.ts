import { type Face, facesOf, typefaces } from '../fonts/faces.ts'
import { boxEms, featuresFor, graphemesOf, runsOf, widthOfRun } from '../fonts/runs.ts'
import type { Mark } from '../layout/page-elements.ts'
import { boxPath } from '../layout/page-elements.ts'

const tones = { ink: '#000000', paper: '#ffffff' } as const

/** Registers every face with a font that is read already, a source that the types of pdfkit do not name. */
export const registerFaces = (pdf: PDFKit.PDFDocument): void => {
  for (const typeface of typefaces)
    for (const { name, font } of facesOf(typeface))
      pdf.registerFont(name, font as unknown as PDFKit.Mixins.PDFFontSource)
}

export const drawMark = (pdf: PDFKit.PDFDocument, mark: Mark): void => {
  if (mark.kind === 'text') drawText(pdf, mark)
  else if (mark.kind === 'image') drawImage(pdf, mark)
  else drawPath(pdf, mark)
}

const drawText = (pdf: PDFKit.PDFDocument, mark: Extract<Mark, { kind: 'text' }>): void => {
  let x = mark.x
  const runs = runsOf(mark.text, mark.typeface)
  for (const [index, run] of runs.entries()) {
    if (run.face) drawRun(pdf, run.face, run.text, x, mark)
    else drawUnknown(pdf, run.text, x, mark)
    if (index < runs.length - 1) x += widthOfRun(run, mark.size)
  }
}

type TextPlace = Pick<Extract<Mark, { kind: 'text' }>, 'baseline' | 'size' | 'tone'>

const drawRun = (pdf: PDFKit.PDFDocument, face: Face, text: string, x: number, place: TextPlace): void => {
  const features = featuresFor(text)
  const options = features.length === 0 ? {} : { features: features as PDFKit.Mixins.OpenTypeFeatures[] }
  pdf
    .font(face.name)
    .fontSize(place.size)
    .fillColor(tones[place.tone])
    .text(text, x, place.baseline, { lineBreak: false, baseline: 'alphabetic', ...options })
}

/**
 * Characters that no font here has are drawn as outlined boxes that carry the characters themselves as their
 * actual text (ISO 32000-1, 14.9.4): they can be searched, copied and read aloud. Readers look for actual text
 * only where glyphs are shown, hence an invisible one in each box.
 */
const drawUnknown = (pdf: PDFKit.PDFDocument, text: string, x: number, place: TextPlace): void => {
  const [face] = facesOf('mono')
  pdf.markContent('Span', { actual: text })
  graphemesOf(text).forEach((_, index) => {
    const left = x + (index * boxEms + 0.06) * place.size
    if (face) {
      pdf.save().addContent('3 Tr')
      drawRun(pdf, face, 'o', left, { ...place, size: place.size * 0.8 })
      pdf.restore()
    }
    const box = {
      x: left,
      y: place.baseline - 0.66 * place.size,
      width: (boxEms - 0.12) * place.size,
      height: 0.66 * place.size,
    }
    pdf.path(boxPath(box)).lineWidth(0.6).strokeColor(tones[place.tone]).stroke()
  })
  pdf.endMarkedContent()
}

const drawImage = (pdf: PDFKit.PDFDocument, mark: Extract<Mark, { kind: 'image' }>): void => {
  const { x, y, width, height, bytes } = mark
  pdf.image(Buffer.from(bytes), x, y, { width, height })
}

const drawPath = (pdf: PDFKit.PDFDocument, mark: Extract<Mark, { kind: 'path' }>): void => {
  pdf.save().path(mark.d)
  if (mark.stroke) {
    pdf.lineWidth(mark.stroke.width).strokeColor(tones.ink)
    if (mark.stroke.dash) pdf.dash(mark.stroke.dash, { space: mark.stroke.dash * 0.8 })
  }
  if (mark.fill && mark.stroke) pdf.fillAndStroke(tones[mark.fill], tones.ink)
  else if (mark.fill) pdf.fill(tones[mark.fill])
  else pdf.stroke()
  pdf.restore()
}
