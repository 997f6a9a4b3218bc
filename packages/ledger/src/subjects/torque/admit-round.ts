import type { Torque } from '@bayledger/reckoning/quantity'
import { studsOf } from '@bayledger/reckoning/sheet'
import { calibrationLapse, usualInterval } from '@bayledger/reckoning/torque/calibration'
import { roundTorque } from '@bayledger/reckoning/torque/rounds'
import { isInSpan, spanForRound, type TorqueSpan } from '@bayledger/reckoning/torque/wrench-range'
import type { AdmitFacts } from '../../admit/facts.ts'
import { type Refusal, refuse } from '../../admit/refusal.ts'
import type { OrderState, TorqueSeal } from '../../state.ts'

/**
 * The rules for every torque round. The figure is the sheet's, to the digit and in its own unit: no formula, chart or
 * rounding comes between the vehicle maker's figure and the wrench. Only the first round has a figure of its own, about
 * half; in a plan of an earlier version that round still had the whole figure.
 */
export const admitRound = (
  state: OrderState,
  round: Omit<TorqueSeal, 'written'> & { readonly stepKey: string },
  facts: AdmitFacts,
): Refusal | null => {
  const studs = studsOf(state.sheet?.sheet)
  if (!studs) return null
  const { figure, wrench } = round
  const step = state.plan?.plan.steps.find(({ stepKey }) => stepKey === round.stepKey)
  const wanted = roundTorque(step?.round ?? 'full', studs.torque)
  const planned = step?.figure?.kind === 'torque' ? step.figure.torque : wanted
  const isFigure = isSame(figure, wanted) || (step?.round === 'half' && isSame(figure, planned))
  if (!isFigure) return refuse('TORQUE_DIFFERS_FROM_SHEET', { sheet: wanted, found: figure })
  if (round.total !== studs.count)
    return refuse('TORQUE_ROUND_INCOMPLETE', {
      why: 'count',
      fastener: studs.fastener,
      count: studs.count,
      found: round.total,
    })
  if (round.clicked !== round.total)
    return refuse('TORQUE_ROUND_INCOMPLETE', { why: 'clicks', clicked: round.clicked, total: round.total })
  if (round.moved.some((stud) => stud > round.total) || new Set(round.moved).size !== round.moved.length)
    return refuse('TORQUE_ROUND_INCOMPLETE', { why: 'moved', fastener: studs.fastener, total: round.total })
  return admitWrench(wrench, figure, spanForRound(step?.round ?? 'full', wrench), facts)
}

const isSame = (one: Torque, other: Torque): boolean => one.value === other.value && one.unit === other.unit

/** Refuses what the writer could see on the wrench's own record; a doubt that only the register knows becomes a hold. */
const admitWrench = (
  wrench: TorqueSeal['wrench'],
  figure: Torque,
  span: TorqueSpan,
  facts: AdmitFacts,
): Refusal | null => {
  if (!facts.wrenches.has(wrench.instrumentId)) return refuse('WRENCH_UNKNOWN', { wrench: wrench.code })
  const lapse = calibrationLapse({ dueOn: wrench.dueOn, cycles: wrench.cyclesBefore }, facts.now.slice(0, 10))
  if (lapse === 'day')
    return refuse('WRENCH_OVERDUE', { why: 'day', wrench: wrench.code, dueOn: wrench.dueOn })
  if (lapse === 'cycles')
    return refuse('WRENCH_OVERDUE', {
      why: 'cycles',
      wrench: wrench.code,
      cycles: wrench.cyclesBefore,
      dueAt: usualInterval.cycles,
    })
  return isInSpan(figure, span)
    ? null
    : refuse('WRENCH_OUT_OF_RANGE', {
        wrench: wrench.code,
        found: figure,
        low: span.low,
        high: span.high,
        unit: span.unit,
      })
}
