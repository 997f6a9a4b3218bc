import type { OrderPen } from '../../ledger/test-support/order-pen.ts'
import { lead, technician } from '../../ledger/test-support/shop.ts'
import { closingOf } from '../../ledger/test-support/step-payload.ts'
import { composeReportContent, type ReportContext } from '../src/compose-content.ts'
import type { ReportContent } from '../src/content.ts'
import { reportContext } from './worked-context.ts'
import { workedOrder } from './worked-order.ts'
import { workedSheet } from './worked-sheet.ts'

/** The left rear tire came in at 24.0 of 35 psi, with a nail in it; the customer said No to the search for its leak, and nobody set it. */
const declinedLowTire = (): OrderPen =>
  workedOrder('declined', {
    psi: { LR: 24 },
    nail: 'LR',
    declined: ['leak.LR'],
    setAside: ['LR.pressure.set', 'LR.closing.read', 'SP.pressure.set'],
  })

/**
 * The right rear wheel hangs on bolts: it was torqued to the figure and came off once more, and of its second fitting a
 * bolt moved under the second person.
 */
const wheelOnBolts = (): OrderPen =>
  workedOrder('bolts', {
    sheet: { ...workedSheet, studs: { ...workedSheet.studs, fastener: 'bolt' } },
    instead: (pen, step) => {
      const work = pen.state().work.RR
      if (step.stepKey === 'RR.studs.torque-again' && work?.earlierFittings.length === 0) {
        const mounted = pen.entries().findLast(({ kind }) => kind === 'wheel.mounted')
        return pen.strike(mounted?.id ?? '', technician).admitted
      }
      if (step.stepKey === 'RR.studs.second-check' && work?.overtaken.length === 0) {
        const { kind, payload } = closingOf(pen.state(), step)
        return (
          kind === 'torque.checked' && pen.attempt(kind, { ...payload, moved: [3] }, { by: lead }).admitted
        )
      }
      return false
    },
  })

/** The reports of these two orders. */
export const shownReports = (
  language: ReportContext['language'] = reportContext.language,
): {
  readonly declinedLowTire: ReportContent
  readonly wheelOnBolts: ReportContent
} => ({
  declinedLowTire: composeReportContent(declinedLowTire().state(), { ...reportContext, language }),
  wheelOnBolts: composeReportContent(wheelOnBolts().state(), { ...reportContext, language }),
})
