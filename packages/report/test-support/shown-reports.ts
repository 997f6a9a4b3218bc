import { canonicalText } from '@bayledger/ledger/digests'
import type { IssuedBundle, OrderState } from '@bayledger/ledger/state'
import { composeReportContent } from '../src/compose-content.ts'
import type { ReportContent } from '../src/content.ts'
import { reportContext } from './worked-context.ts'
import { moneyOf, workedMoney, workedScope } from './worked-estimate.ts'
import { advisor, digest, lead, technician, written } from './worked-people.ts'
import { workedSheet } from './worked-sheet.ts'
import { workedState } from './worked-state.ts'

const leak: IssuedBundle = {
  bundleKey: 'leak-lr',
  title: 'leak',
  findings: ['tire-low'],
  safety: true,
  cautions: [{ number: 'CT-16', version: 1 }],
  alternativeTo: null,
  works: [{ kind: 'find-leak', wheel: 'LR' }],
  money: digest('4'),
}

const issued = workedState.diagnosis
const estimate = workedState.estimates[0]
const arrived = workedState.arrival.wheels.LR
if (!issued || !estimate || !arrived?.gauge) throw new Error('the worked state is a whole order')

/** The left rear tire came in at 24.0 of 35 psi; the customer said No to the search for its leak, and nobody set it. */
export const declinedLowTire: OrderState = {
  ...workedState,
  arrival: {
    ...workedState.arrival,
    wheels: {
      ...workedState.arrival.wheels,
      LR: { ...arrived, gauge: { ...arrived.gauge, pressure: { value: 24, unit: 'psi' } } },
    },
  },
  diagnosis: {
    ...issued,
    diagnosis: {
      ...issued.diagnosis,
      findings: [
        ...issued.diagnosis.findings.filter(({ code }) => code === 'sensor-silent'),
        {
          code: 'tire-low',
          wheels: ['LR'],
          confidence: 'firm',
          kind: 'also',
          because: [
            {
              field: 'wheels.LR.gauge',
              value: 24,
              unit: 'psi',
              code: 'cold-under-label',
              values: { cold: 24, label: 35, unit: 'psi' },
            },
          ],
          figures: { form: 'under-flash', wheels: ['LR'], value: 24, label: 35, unit: 'psi' },
          offers: ['leak-find'],
          holds: [],
        },
      ],
    },
  },
  estimates: [{ ...estimate, scope: { ...workedScope, bundles: [...workedScope.bundles, leak] } }],
  answers: {
    ...workedState.answers,
    'leak-lr': {
      revision: 1,
      answer: 'declined',
      deferredUntil: null,
      cautionsShown: leak.cautions,
      written: written(21, advisor),
    },
  },
  work: Object.fromEntries(Object.entries(workedState.work).filter(([wheel]) => wheel !== 'LR')),
  closing: {
    ...workedState.closing,
    wheels: Object.fromEntries(
      Object.entries(workedState.closing.wheels).filter(([wheel]) => wheel !== 'LR'),
    ),
  },
}

const work = workedState.work.RR
const { half, full, again } = work?.rounds ?? {}
if (!work?.checked || !half || !full || !again) throw new Error('the right rear wheel is torqued')

/**
 * The right rear wheel hangs on bolts: it was torqued and came off once more, and of its second fitting a bolt moved under
 * the second person.
 */
export const wheelOnBolts: OrderState = {
  ...workedState,
  sheet: {
    sheet: { ...workedSheet, studs: { ...workedSheet.studs, fastener: 'bolt' } },
    written: written(3, advisor),
  },
  work: {
    ...workedState.work,
    RR: {
      ...work,
      earlierFittings: [
        { ...half, round: 'half', written: written(22) },
        { ...full, round: 'full', written: written(23) },
      ],
      overtaken: [
        { ...full, round: 'full', written: written(24) },
        { ...again, round: 'again', written: written(25, technician) },
        { ...work.checked, moved: [3], round: 'check', written: written(26, lead) },
      ],
    },
  },
}

const context = {
  ...reportContext,
  money: new Map([...workedMoney, [digest('4'), canonicalText(moneyOf('leak-lr', 4_950))] as const]),
}

/** The reports of these two orders. */
export const shownReports = (): {
  readonly declinedLowTire: ReportContent
  readonly wheelOnBolts: ReportContent
} => ({
  declinedLowTire: composeReportContent(declinedLowTire, context),
  wheelOnBolts: composeReportContent(wheelOnBolts, context),
})
