import { customerLanguages } from '@bayledger/wording/customer-languages'
import type { ReportContent } from '../content.ts'
import { content, element, furniture, type Item, type Mark, rule } from './page-elements.ts'
import { sheet, sizes } from './paper.ts'
import { lineHeight, lineMarks, linesOf, type Style, textMark } from './paragraph.ts'
import { qrPath } from './qr-path.ts'

const says = ({ language }: ReportContent) => customerLanguages[language].report.pageOne

const body: Style = { typeface: 'regular', size: sizes.body }
const small: Style = { typeface: 'regular', size: 8.5 }
const strong: Style = { typeface: 'bold', size: sizes.body }

const qrSide = 58
const qrColumn = 244
const lineWidth = 122

const namesOf = (report: ReportContent): string[][] =>
  report.pageOne.signatures.slice(0, 2).map(({ name }) => (name ? linesOf(name, small, lineWidth) : []))

/** Lines that the longest name under a signature needs beyond its first, as high as they are, pt. */
const roomForNames = (report: ReportContent): number =>
  Math.max(0, ...namesOf(report).map((lines) => lines.length - 1)) * lineHeight(small)

/** The height of the foot of page one, pt: a long name makes it higher. */
export const footHeightOf = (report: ReportContent): number => 62 + roomForNames(report)

/** Signature lines on the left; on the right how anyone can have the file checked. */
export const layFoot = (report: ReportContent, top: number): Item[] => [
  ...report.pageOne.signatures.slice(0, 2).flatMap((signature, index) => {
    const x = sheet.left + index * (lineWidth + 16)
    const y = top + 20
    return [
      furniture(1, [rule(x, y, x + lineWidth, y, 0.8)]),
      element('P', [
        content(1, [
          textMark(`${signature.label} `, x, y + 3, body),
          ...lineMarks(namesOf(report)[index] ?? [], x, y + 3 + lineHeight(body), small),
        ]),
      ]),
    ]
  }),
  element('P', [
    content(
      1,
      lineMarks(
        linesOf(report.pageOne.signing, small, 2 * lineWidth + 16).slice(0, 2),
        sheet.left,
        top + 20 + 3 + lineHeight(body) + lineHeight(small) + roomForNames(report),
        small,
      ),
    ),
  ]),
  ...layCheck(report, sheet.right - qrColumn, top),
]

const layCheck = (report: ReportContent, x: number, top: number): Item[] => {
  const textX = x + qrSide + 8
  const width = qrColumn - qrSide - 8
  const code: Mark = {
    kind: 'path',
    d: qrPath(report.checkAddress, x, top, qrSide),
    fill: 'ink',
    stroke: null,
  }
  const lines = linesOf(report.pageOne.check, small, width)
  return [
    element('Figure', [content(1, [code])], {
      alt: says(report).codeAlt(report.checkAddress),
      box: { x, y: top, width: qrSide, height: qrSide },
    }),
    element('P', [
      content(1, [
        textMark(`${says(report).titles.genuine} `, textX, top + 2, strong),
        ...lineMarks(lines, textX, top + 15, small),
      ]),
    ]),
  ]
}
