import type { GaugeUsed } from '@bayledger/ledger/subjects/arrival/kinds'
import type { WrenchUsed } from '@bayledger/ledger/subjects/torque/kinds'
import type { DemoCalendar } from './calendar.ts'
import { demoId } from './seeded.ts'

export type DemoInstrument = {
  readonly id: string
  readonly kind: 'wrench' | 'gauge'
  readonly code: string
  readonly body: Record<string, string | number>
  readonly dueOn: string | null
  readonly cycles: number
  readonly quarantined: boolean
}

const wrench = (code: string, dueOn: string, cycles: number): DemoInstrument => ({
  id: demoId(`instrument/${code}`),
  kind: 'wrench',
  code,
  body: { rangeLow: 30, rangeHigh: 250, rangeUnit: 'lbf·ft', accuracyPercent: 4 },
  dueOn,
  cycles,
  quarantined: false,
})

const gauge = (code: string, correctionPsi: number, quarantined: boolean): DemoInstrument => ({
  id: demoId(`instrument/${code}`),
  kind: 'gauge',
  code,
  body: {
    correctionPsi,
    ...(quarantined ? { why: 'Reads 3.1 psi under the master gauge since this morning.' } : {}),
  },
  dueOn: null,
  cycles: 0,
  quarantined,
})

/** The instruments of Tamber Street. W-05 is overdue and GA-4 is quarantined, so neither can be chosen. */
export const instruments = (calendar: DemoCalendar): readonly DemoInstrument[] => [
  wrench('W-03', calendar.on('2026-03-02'), 4_610),
  wrench('W-05', calendar.on('2026-01-09'), 2_030),
  wrench('W-07', calendar.on('2026-06-15'), 1_220),
  gauge('GA-1', 0.2, false),
  gauge('GA-4', -3.1, true),
]

/** Wrench W-07 as it is before each round of a job: its clicks from `cyclesBefore` on, so many more with each round. */
export const wrenchInUse = (
  calendar: DemoCalendar,
  { cyclesBefore, clicksARound }: { readonly cyclesBefore: number; readonly clicksARound: number },
): (() => WrenchUsed) => {
  let cycles = cyclesBefore
  return () => {
    const used = {
      instrumentId: demoId('instrument/W-07'),
      code: 'W-07',
      dueOn: calendar.on('2026-06-15'),
      cyclesBefore: cycles,
      rangeLow: 30,
      rangeHigh: 250,
      rangeUnit: 'lbf·ft',
    } as const
    cycles += clicksARound
    return used
  }
}

/** The gauge that every reading of the demo was taken with. */
export const goodGauge: GaugeUsed = {
  instrumentId: demoId('instrument/GA-1'),
  code: 'GA-1',
  correctionPsi: 0.2,
}
