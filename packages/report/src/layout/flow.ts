import type { CustomerLanguage } from '@bayledger/wording/language'
import type { Element, Mark } from './page-elements.ts'
import { content } from './page-elements.ts'
import { sheet } from './paper.ts'
import { lineHeight, type Style, textMark } from './paragraph.ts'

/** Where the next thing goes, and in which language: text runs down the sheet and on to the next page. */
export type Flow = { page: number; y: number; readonly language: CustomerLanguage }

/** Makes sure that `height` points are free, on a new page if necessary; returns whether it started one. */
export const ensure = (flow: Flow, height: number): boolean => {
  if (flow.y + height <= sheet.bottom || flow.y === sheet.top) return false
  flow.page += 1
  flow.y = sheet.top
  return true
}

/** Sets lines into an element one by one, so that a long text may cross pages. */
export const flowLines = (
  flow: Flow,
  into: Element,
  lines: readonly string[],
  x: number,
  style: Style,
): void => {
  const parts: { page: number; marks: Mark[] }[] = []
  for (const line of lines) {
    ensure(flow, lineHeight(style))
    const mark = textMark(line, x, flow.y, style)
    const last = parts.at(-1)
    if (last?.page === flow.page) last.marks.push(mark)
    else parts.push({ page: flow.page, marks: [mark] })
    flow.y += lineHeight(style)
  }
  into.children.push(...parts.map(({ page, marks }) => content(page, marks)))
}
