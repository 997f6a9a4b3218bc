import { planCells, planOutline, planRules, planView } from '@bayledger/reckoning/plan-drawing/plan-geometry'
import type { WheelLine } from '../content.ts'
import { cellWords, figureMarks, layCell } from './cell.ts'
import {
  type Box,
  boxPath,
  content,
  type Element,
  element,
  type Mark,
  outlinedBox,
  rule,
} from './page-elements.ts'
import { lineHeight, type Style, textMark } from './paragraph.ts'
import { shapeMarks } from './severity-shape.ts'

const label: Style = { typeface: 'bold', size: 10 }
const small: Style = { typeface: 'regular', size: 8.5 }
const value: Style = { typeface: 'regular', size: 10.5 }
const after: Style = { typeface: 'bold', size: 10.5 }

/** The vehicle from above, nose up, each wheel with what it held before and after; `scale` is points per unit. */
export const layPlanFigure = (
  page: number,
  wheels: readonly WheelLine[],
  x: number,
  y: number,
  scale: number,
): Element => {
  const at = (box: Box): Box => ({
    x: x + box.x * scale,
    y: y + box.y * scale,
    width: box.width * scale,
    height: box.height * scale,
  })
  const marks: Mark[] = [
    { kind: 'path', d: scalePath(planOutline, x, y, scale), fill: null, stroke: { width: 1.1, dash: null } },
    ...planRules.map(({ from, to }) =>
      rule(x + from.x * scale, y + from.y * scale, x + to.x * scale, y + to.y * scale, 0.5),
    ),
    ...wheels.flatMap((wheel) => wheelMarks(wheel, at(planCells[wheel.position].box))),
  ]
  const box = { x, y, width: planView.width * scale, height: planView.height * scale }
  const alt = [
    'The vehicle from above, nose up.',
    ...wheels.map(
      (wheel) =>
        `${wheel.name}: before ${cellWords(wheel.before)}, after ${cellWords(wheel.after)}, label ${cellWords(wheel.label)}.`,
    ),
  ].join(' ')
  return element('Figure', [content(page, marks)], { alt, box })
}

const wheelMarks = (wheel: WheelLine, box: Box): Mark[] => {
  const inset = wheel.marked ? 8 : 5
  const inner = box.width - inset - 3
  const column = 28
  const line = (words: string, cell: WheelLine['before'], top: number, style: Style): Mark[] => [
    textMark(`${words} `, box.x + inset, top + 1.5, small),
    ...(cell.kind === 'figure'
      ? figureMarks(cell.value, cell.unit, box.x + inset + column, top, style)
      : layCell(cell, inner - column, small).marksAt(box.x + inset + column, top)),
  ]
  const top = box.y + 3
  return [
    { kind: 'path', d: boxPath(box), fill: 'paper', stroke: { width: 0.6, dash: null } },
    ...(wheel.marked === 'cause' ? shapeMarks('cause', box) : []),
    ...(wheel.marked && wheel.marked !== 'cause'
      ? [outlinedBox({ x: box.x + 1, y: box.y + 1, width: box.width - 2, height: box.height - 2 }, 2)]
      : []),
    textMark(wheel.position, box.x + inset, top, label),
    textMark(` ${wheel.name}`, box.x + inset + 17, top + 1.2, small),
    ...line('before', wheel.before, top + lineHeight(label) + 1, value),
    ...line('after', wheel.after, top + lineHeight(label) + 1 + Math.max(16, gapRoom(wheel.before)), after),
  ]
}

/** A gap's words take two lines in the narrow box; a figure takes one. */
const gapRoom = (cell: WheelLine['before']): number => (cell.kind === 'figure' ? 16 : 22)

/** Moves and scales a path made of absolute M, L and Z words only, as the plan's outline is. */
const scalePath = (d: string, x: number, y: number, scale: number): string => {
  let isX = true
  return d
    .split(/\s+/)
    .map((word) => {
      if (/^[MLZ]$/.test(word)) return word
      const placed = (isX ? x : y) + Number(word) * scale
      isX = !isX
      return String(placed)
    })
    .join(' ')
}
