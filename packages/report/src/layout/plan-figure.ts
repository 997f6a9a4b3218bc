import { planCells, planOutline, planRules, planView } from '@bayledger/reckoning/plan-drawing/plan-geometry'
import type { Cell, WheelLine } from '../content.ts'
import { widthOf } from '../fonts/runs.ts'
import { cellWords, figureMarks } from './cell.ts'
import type { Flow } from './flow.ts'
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

const says = ({ language }: Pick<Flow, 'language'>) => language.report.paper.plan

const label: Style = { typeface: 'bold', size: 10 }
const small: Style = { typeface: 'regular', size: 8.5 }
const mark: Style = { typeface: 'bold', size: 9 }
const value: Style = { typeface: 'regular', size: 10.5 }
const after: Style = { typeface: 'bold', size: 10.5 }

/** The vehicle from above, nose up, each wheel with what it held before and after; `scale` is points per unit. */
export const layPlanFigure = (
  flow: Flow,
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
  // In a language whose names are too long for the boxes, the positions alone are drawn.
  const isNamed = wheels.every(({ name, position }) =>
    isWithin(name, small, planCells[position].box.width * scale - 5 - nameInset),
  )
  const marks: Mark[] = [
    { kind: 'path', d: scalePath(planOutline, x, y, scale), fill: null, stroke: { width: 1.1, dash: null } },
    ...planRules.map(({ from, to }) =>
      rule(x + from.x * scale, y + from.y * scale, x + to.x * scale, y + to.y * scale, 0.5),
    ),
    ...wheels.flatMap((wheel) => wheelMarks(flow, wheel, at(planCells[wheel.position].box), isNamed)),
  ]
  const box = { x, y, width: planView.width * scale, height: planView.height * scale }
  const alt = [
    says(flow).drawing,
    ...wheels.map((wheel) =>
      says(flow).wheel({
        name: wheel.name,
        mark: wheel.marked?.word ?? null,
        before: cellWords(wheel.before),
        after: cellWords(wheel.after),
        label: cellWords(wheel.label),
      }),
    ),
  ].join(' ')
  return element('Figure', [content(flow.page, marks)], { alt, box })
}

const wheelMarks = (flow: Flow, wheel: WheelLine, box: Box, isNamed: boolean): Mark[] => {
  const { marked } = wheel
  const isStop = marked !== null && shapeOf[marked.severity] === 'solid-bar'
  const inset = marked ? 8 : 5
  const tone = isStop ? 'paper' : 'ink'
  const { before, after: left } = says(flow)
  const column = Math.max(...[before, left].map((words) => widthOf(words, small.typeface, small.size))) + 4
  const line = (words: string, cell: Cell, top: number, style: Style): Mark[] => [
    textMark(`${words} `, box.x + inset, top + 1.5, small),
    ...readingMarks(flow, cell, box.x + inset + column, top, style),
  ]
  const top = box.y + 3
  // The name yields to the word of the mark: it is in the table on the same page.
  const said = marked ? markWord(flow, marked, box.width - inset - nameInset) : isNamed ? wheel.name : ''
  return [
    { kind: 'path', d: boxPath(box), fill: 'paper', stroke: { width: 0.6, dash: null } },
    ...(marked ? markMarks(marked, isStop, box) : []),
    textMark(`${wheel.position} `, box.x + inset, top, { ...label, tone }),
    textMark(`${said} `, box.x + inset + nameInset, top + (marked ? 0.6 : 1.2), {
      ...(marked ? mark : small),
      tone,
    }),
    ...line(before, wheel.before, top + lineHeight(label) + 1, value),
    ...line(left, wheel.after, top + lineHeight(label) + 17, after),
  ]
}

/** Points from the position to the name of a wheel or to the word of its mark. */
const nameInset = 19

const isWithin = (words: string, style: Style, room: number): boolean =>
  widthOf(words, style.typeface, style.size) <= room

/** The word of the mark, or its short form where the box is too narrow for it. */
const markWord = (flow: Flow, { word, severity }: NonNullable<WheelLine['marked']>, room: number): string => {
  const { marks } = flow.language.customerPage.found
  if (isWithin(word, mark, room)) return word
  return Object.hasOwn(marks, severity) ? marks[severity as keyof typeof marks] : ''
}

/** A stop's cell has a solid bar across its top and a heavy outline; a cause has the rule at its left. */
const markMarks = ({ severity }: NonNullable<WheelLine['marked']>, isStop: boolean, box: Box): Mark[] =>
  isStop
    ? [
        filledBox({ ...box, height: lineHeight(label) + 4 }),
        outlinedBox({ x: box.x + 1, y: box.y + 1, width: box.width - 2, height: box.height - 2 }, 2),
      ]
    : shapeMarks(severity, box)

/** The box is too narrow for why there is no reading; the table on the same page says it. */
const readingMarks = (flow: Flow, cell: Cell, x: number, top: number, style: Style): readonly Mark[] => {
  if (cell.kind === 'figure') return figureMarks(cell.value, cell.unit, x, top, style)
  const width = widthOf(says(flow).noReading, small.typeface, small.size) + 4
  return [
    outlinedBox({ x: x - 2, y: top + 0.5, width, height: lineHeight(small) + 1 }, 0.8, 2.5),
    textMark(says(flow).noReading, x, top + 1.5, small),
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
