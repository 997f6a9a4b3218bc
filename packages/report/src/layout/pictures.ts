import type { Picture } from '../content.ts'
import { ensure, type Flow } from './flow.ts'
import { type Box, content, element, type Item, outlinedBox } from './page-elements.ts'
import { sheet, sheetWidth, sizes } from './paper.ts'
import { lineHeight, lineMarks, linesOf, type Style } from './paragraph.ts'

const body: Style = { typeface: 'regular', size: sizes.body }

/** Two beside each other; heights in points. */
const gutter = 16
const cell = { width: (sheetWidth - gutter) / 2, height: 184 } as const

/** Photos in rows of two, each as large as its cell lets it be, with its caption below it. */
export const layPictures = (flow: Flow, pictures: readonly Picture[]): Item[] => {
  const items: Item[] = []
  for (let first = 0; first < pictures.length; first += 2) {
    const row = pictures.slice(first, first + 2).map((picture) => ({
      picture,
      lines: linesOf(picture.caption, body, cell.width),
    }))
    const captionHeight = Math.max(...row.map(({ lines }) => lines.length)) * lineHeight(body)
    const height = cell.height + 4 + captionHeight
    ensure(flow, height)
    for (const [column, { picture, lines }] of row.entries()) {
      const x = sheet.left + column * (cell.width + gutter)
      const box = fitted(picture.jpeg, x, flow.y)
      items.push(
        element(
          'Figure',
          [content(flow.page, [{ kind: 'image', ...box, bytes: picture.jpeg.bytes }, outlinedBox(box, 0.5)])],
          { alt: picture.alt, box },
        ),
        element('P', [content(flow.page, lineMarks(lines, x, flow.y + cell.height + 4, body))]),
      )
    }
    flow.y += height + 6
  }
  return items
}

/** The picture's place in its cell, in its own proportions. */
const fitted = ({ width, height }: Picture['jpeg'], x: number, y: number): Box => {
  const scale = Math.min(cell.width / width, cell.height / height)
  return { x, y, width: width * scale, height: height * scale }
}
