import type { InstrumentContent } from '@bayledger/contract/instruments'
import type { FieldProblem } from '@bayledger/contract/problem'
import { calibrationDueOn } from '@bayledger/reckoning/torque/calibration'
import { torqueIn } from '@bayledger/reckoning/units/torque-units'
import { doubtWords } from '../../words/doubt-words.ts'

/**
 * Where scales of click wrenches for wheels usually end, by unit (common practice, no source). A figure of one list that is
 * missing in its own unit's list was likely read off the other scale: both are printed on most wrenches.
 */
const usualEnds: Readonly<Record<'lbf·ft' | 'N·m', readonly number[]>> = {
  lbf·ft: [50, 75, 80, 100, 150, 200, 250, 300, 400, 600],
  N·m: [60, 100, 110, 135, 200, 210, 220, 300, 330, 340, 350, 400, 420, 550, 800],
}

/** A gauge that is further off the master is usually taken out of use (common practice, no source). */
const usualOffsetPsi = 1

/** What of an instrument may be right and is likely a slip. `today`: YYYY-MM-DD, UTC, as the ledger compares days. */
export const doubtsOf = (content: InstrumentContent, today: string): FieldProblem[] =>
  content.kind === 'gauge'
    ? gaugeDoubts(content)
    : [...scaleDoubts(content), ...calibrationDoubts(content, today)]

type Of<Kind extends InstrumentContent['kind']> = Extract<InstrumentContent, { kind: Kind }>

const gaugeDoubts = ({ offsetPsi, quarantined }: Of<'gauge'>): FieldProblem[] =>
  Math.abs(offsetPsi) > usualOffsetPsi && !quarantined
    ? [{ field: 'offsetPsi', found: `${offsetPsi} psi`, allowed: doubtWords.offset(usualOffsetPsi) }]
    : []

const scaleDoubts = ({ rangeHigh, rangeUnit }: Of<'wrench'>): FieldProblem[] => {
  if (rangeUnit === 'lbf·in') return []
  const other = rangeUnit === 'N·m' ? 'lbf·ft' : 'N·m'
  const isSlip = !usualEnds[rangeUnit].includes(rangeHigh) && usualEnds[other].includes(rangeHigh)
  if (!isSlip) return []
  const read = Math.round(torqueIn(rangeUnit, { value: rangeHigh, unit: other }))
  return [
    {
      field: 'rangeUnit',
      found: `${rangeHigh} ${rangeUnit}`,
      allowed: doubtWords.scale(`${rangeHigh} ${other}`, `${read} ${rangeUnit}`),
    },
  ]
}

const calibrationDoubts = ({ calibratedOn, dueOn }: Of<'wrench'>, today: string): FieldProblem[] => {
  if (dueOn < today) return [{ field: 'dueOn', found: dueOn, allowed: doubtWords.overdue }]
  if (dueOn === today) return [{ field: 'dueOn', found: dueOn, allowed: doubtWords.dueToday }]
  const latest = calibratedOn === null ? null : calibrationDueOn(calibratedOn, null)
  return latest !== null && dueOn > latest
    ? [{ field: 'dueOn', found: dueOn, allowed: doubtWords.longInterval(latest) }]
    : []
}
