import { planView } from '@bayledger/reckoning/plan-drawing/plan-geometry'
import { customerLanguages } from '@bayledger/wording/customer-languages'
import { columnsOf } from '../columns.ts'
import type { PageOne, ReportContent } from '../content.ts'
import type { Flow } from './flow.ts'
import { type Element, element, type Item } from './page-elements.ts'
import { footHeightOf, layFoot } from './page-one-foot.ts'
import { layCanDrive, layFacts, layShop } from './page-one-head.ts'
import { layDid, layFixed, layFound, layNext, layNotDone, layTold } from './page-one-parts.ts'
import { sheet, sheetWidth } from './paper.ts'
import { layPlanFigure } from './plan-figure.ts'
import { layTable } from './table.ts'

/** How many lines each part may take; a cut part says where the whole of it is. */
export type LineLimits = {
  /** Without the drawing, the words take the whole width; the table says all that it shows. */
  readonly isDrawn: boolean
  readonly told: number
  readonly found: number
  readonly did: number
  readonly notDone: number
}

/** With the whole width a sentence takes fewer lines, so that nothing is cut while there is room. */
const undrawn: LineLimits = { isDrawn: false, told: 4, found: 6, did: 8, notDone: 8 }
const tightest: LineLimits = { isDrawn: false, told: 1, found: 2, did: 3, notDone: 3 }
const limits: readonly LineLimits[] = [
  { isDrawn: true, told: 8, found: 8, did: 10, notDone: 10 },
  { isDrawn: true, told: 4, found: 6, did: 8, notDone: 8 },
  undrawn,
  { isDrawn: true, told: 3, found: 4, did: 6, notDone: 5 },
  { isDrawn: false, told: 3, found: 3, did: 6, notDone: 6 },
  { isDrawn: false, told: 2, found: 3, did: 4, notDone: 4 },
  tightest,
]

const planScale = 0.55
const planWidth = planView.width * planScale
const columnGap = 14
const leftWidth = sheetWidth - planWidth - columnGap

/** The page that a customer reads in a minute; it takes the most generous limits that leave room for its foot. */
export const layPageOne = (report: ReportContent): Element => {
  for (const lines of limits) {
    const laid = layWith(report, lines)
    if (laid.bottom + footHeightOf(report) <= sheet.bottom) return laid.page
  }
  return layWith(report, tightest).page
}

const layWith = (report: ReportContent, lines: LineLimits) => {
  const { pageOne } = report
  const language = customerLanguages[report.language]
  const flow: Flow = { page: 1, y: sheet.top, language }
  const head = [layCanDrive(flow, pageOne), layShop(flow, pageOne), layFacts(flow, pageOne)]
  const top = flow.y + 4
  const plan = lines.isDrawn
    ? [layPlanFigure(flow, pageOne.wheels, sheet.right - planWidth, top, planScale)]
    : []
  const width = lines.isDrawn ? leftWidth : sheetWidth
  flow.y = top
  const left: Item[] = [
    ...layTold(flow, pageOne, width, lines.told),
    ...layFound(flow, pageOne, width, lines.found),
    ...layDid(flow, pageOne, width, lines.did),
    ...layNotDone(flow, pageOne, width, lines.notDone),
    ...layFixed(flow, pageOne, width),
  ]
  flow.y = Math.max(flow.y, lines.isDrawn ? top + planView.height * planScale : 0) + 4
  const rest = [layWheelTable(flow, pageOne), ...layNext(flow, pageOne)]
  const bottom = flow.page === 1 ? flow.y : Number.POSITIVE_INFINITY
  return {
    bottom,
    page: element('Sect', [
      ...head.flat(),
      ...left,
      ...plan,
      ...rest,
      ...layFoot(report, sheet.bottom - footHeightOf(report) + 3),
    ]),
  }
}

const wheelShares = {
  wheel: 23,
  before: 13,
  after: 13,
  label: 11,
  sensorBefore: 20,
  sensorAfter: 20,
}

/** Points over and under a row's text: page one has to hold the whole of it. */
const tightRows = 1.2

const layWheelTable = (flow: Flow, { wheels }: PageOne): Element => {
  flow.y += 4
  return layTable(
    flow,
    columnsOf(flow.language.report.paper.wheels, wheelShares),
    wheels.map((wheel) => ({
      entry: null,
      cells: [
        { kind: 'words', text: `${wheel.position} ${wheel.name}` },
        wheel.before,
        wheel.after,
        wheel.label,
        wheel.sensorBefore,
        wheel.sensorAfter,
      ],
    })),
    tightRows,
  )
}
