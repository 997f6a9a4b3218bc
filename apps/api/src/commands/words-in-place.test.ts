import type { ReportContent } from '@bayledger/report/content'
import { widthOf } from '@bayledger/report/fonts/runs'
import { layOutReport } from '@bayledger/report/layout/lay-out-report'
import type { Content, Furniture, Item, Mark } from '@bayledger/report/layout/page-elements'
import { sheet } from '@bayledger/report/layout/paper'
import { customerLanguages } from '@bayledger/wording/customer-languages'
import { describe, expect, it } from 'vitest'
import { shownReports } from '../../../../packages/report/test-support/shown-reports.ts'
import { demoReport } from './demo-report.ts'

type Text = Extract<Mark, { kind: 'text' }>

const leavesOf = (item: Item): (Content | Furniture)[] =>
  item.kind === 'element' ? item.children.flatMap(leavesOf) : [item]

/** Where a text is, a tenth of its size inward: letters of two lines may touch. */
const boxOf = ({ x, baseline, text, typeface, size }: Text) => ({
  left: x,
  right: x + widthOf(text.trimEnd(), typeface, size),
  top: baseline - 0.62 * size,
  bottom: baseline + 0.1 * size,
})

const faultsOf = (report: ReportContent): string[] => {
  const laid = layOutReport(report)
  const onPage = new Map<number, Text[]>()
  for (const { page, marks } of leavesOf(laid.root))
    for (const mark of marks)
      if (mark.kind === 'text' && mark.text.trim() !== '')
        onPage.set(page, [...(onPage.get(page) ?? []), mark])
  return [...onPage].flatMap(([page, texts]) =>
    texts.flatMap((one, index) => {
      const box = boxOf(one)
      const over = box.right > sheet.right + 0.5 ? [`${page}: beyond the sheet: ${one.text}`] : []
      const hit = texts.slice(index + 1).filter((other) => {
        const its = boxOf(other)
        return (
          box.left < its.right - 0.5 &&
          its.left < box.right - 0.5 &&
          box.top < its.bottom - 0.5 &&
          its.top < box.bottom - 0.5
        )
      })
      return [...over, ...hit.map((other) => `${page}: "${one.text}" over "${other.text}"`)]
    }),
  )
}

describe.each(['en', 'es'] as const)('a report in %s', (code) => {
  it.each(['T-2601', 'T-2605', 'T-2614'])('%s has every word in its own place', (number) => {
    expect(faultsOf(demoReport(number, code))).toEqual([])
  })

  it('has a place for every word of a declined tire and of a wheel on bolts', () => {
    const { declinedLowTire, wheelOnBolts } = shownReports(customerLanguages[code])
    expect(faultsOf(declinedLowTire)).toEqual([])
    expect(faultsOf(wheelOnBolts)).toEqual([])
  })
})
