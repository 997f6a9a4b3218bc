import { planCells, planOutline, planRules, planView } from '@bayledger/reckoning/plan-drawing/plan-geometry'
import { english } from '@bayledger/wording/en/english'
import type { Cell, WheelLine } from '../content.ts'
import { widthOf } from '../fonts/runs.ts'
import { cellWords, figureMarks } from './cell.ts'
import {
  type Box,
  boxPath,
  content,
  type Element,
  element,
  filledBox,
  type Mark,
  outlinedBox,
  rule,
} from './page-elements.ts'
import { lineHeight, type Style, textMark } from './paragraph.ts'
import { shapeMarks, shapeOf } from './severity-shape.ts'

const { plan: says } = english.report.paper

const label: Style = { typeface: 'bold', size: 10 }
const small: Style = { typeface: 'regular', size: 8.5 }
const mark: Style = { typeface: 'bold', size: 9 }
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
    says.drawing,
    ...wheels.map((wheel) =>
      says.wheel({
        name: wheel.name,
        mark: wheel.marked?.word ?? null,
        before: cellWords(wheel.before),
        after: cellWords(wheel.after),
        label: cellWords(wheel.label),
      }),
    ),
  ].join(' ')
  return element('Figure', [content(page, marks)], { alt, box })
}

const wheelMarks = (wheel: WheelLine, box: Box): Mark[] => {
  const { marked } = wheel
  const isStop = marked !== null && shapeOf[marked.severity] === 'solid-bar'
  const inset = marked ? 8 : 5
  const tone = isStop ? 'paper' : 'ink'
  const line = (words: string, cell: Cell, top: number, style: Style): Mark[] => [
    textMark(`${words} `, box.x + inset, top + 1.5, small),
    ...readingMarks(cell, box.x + inset + labelColumn, top, style),
  ]
  const top = box.y + 3
  return [
    { kind: 'path', d: boxPath(box), fill: 'paper', stroke: { width: 0.6, dash: null } },
    ...(marked ? markMarks(marked, isStop, box) : []),
    textMark(`${wheel.position} `, box.x + inset, top, { ...label, tone }),
    // The name yields to the word of the mark: it is in the table on the same page.
    textMark(marked ? `${marked.word} ` : `${wheel.name} `, box.x + inset + 19, top + (marked ? 0.6 : 1.2), {
      ...(marked ? mark : small),
      tone,
    }),
    ...line(says.before, wheel.before, top + lineHeight(label) + 1, value),
    ...line(says.after, wheel.after, top + lineHeight(label) + 17, after),
  ]
}

/** A stop's cell has a solid bar across its top and a heavy outline; a cause has the rule at its left. */
const markMarks = ({ severity }: NonNullable<WheelLine['marked']>, isStop: boolean, box: Box): Mark[] =>
  isStop
    ? [
        filledBox({ ...box, height: lineHeight(label) + 4 }),
        outlinedBox({ x: box.x + 1, y: box.y + 1, width: box.width - 2, height: box.height - 2 }, 2),
      ]
    : shapeMarks(severity, box)

const labelColumn = 28

/** The box is too narrow for why there is no reading; the table on the same page says it. */
const readingMarks = (cell: Cell, x: number, top: number, style: Style): readonly Mark[] => {
  if (cell.kind === 'figure') return figureMarks(cell.value, cell.unit, x, top, style)
  const width = widthOf(says.noReading, small.typeface, small.size) + 4
  return [
    outlinedBox({ x: x - 2, y: top + 0.5, width, height: lineHeight(small) + 1 }, 0.8, 2.5),
    textMark(says.noReading, x, top + 1.5, small),
  ]
}

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
