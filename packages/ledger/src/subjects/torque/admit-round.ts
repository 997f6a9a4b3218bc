import type { Torque } from '@bayledger/reckoning/quantity'
import { calibrationLapse, usualInterval } from '@bayledger/reckoning/torque/calibration'
import { isInSpan, usableSpan } from '@bayledger/reckoning/torque/wrench-range'
import type { AdmitFacts } from '../../admit/facts.ts'
import { type Refusal, refuse } from '../../admit/refusal.ts'
import type { OrderState, TorqueSeal } from '../../state.ts'

/**
 * What holds for every torque round. The figure is the sheet's, to the digit and in its own unit: no formula, no
 * chart and no rounding stands between the vehicle maker's figure and the wrench.
 */
export const admitRound = (
  state: OrderState,
  round: Omit<TorqueSeal, 'written'>,
  facts: AdmitFacts,
): Refusal | null => {
  const studs = state.sheet?.sheet.studs
  if (!studs) return null
  const { figure, wrench } = round
  if (figure.value !== studs.torque.value || figure.unit !== studs.torque.unit)
    return refuse(
      'TORQUE_DIFFERS_FROM_SHEET',
      `The sheet says ${studs.torque.value} ${studs.torque.unit}; ${figure.value} ${figure.unit} was recorded. Set the wrench to the sheet's figure and do the round again.`,
    )
  if (round.total !== studs.count)
    return refuse(
      'TORQUE_ROUND_INCOMPLETE',
      `The sheet says ${studs.count} ${studs.fastener}s a wheel; ${round.total} were recorded.`,
    )
  if (round.clicked !== round.total)
    return refuse(
      'TORQUE_ROUND_INCOMPLETE',
      `${round.clicked} of ${round.total} clicked. Every one must click before the round is sealed.`,
    )
  if (round.moved.some((stud) => stud > round.total) || new Set(round.moved).size !== round.moved.length)
    return refuse(
      'TORQUE_ROUND_INCOMPLETE',
      `Name each ${studs.fastener} that moved once, between 1 and ${round.total}.`,
    )
  return admitWrench(wrench, figure, facts)
}

/** Refuses what the writer could see on the wrench's own record; what only the register knows becomes a hold. */
const admitWrench = (wrench: TorqueSeal['wrench'], figure: Torque, facts: AdmitFacts): Refusal | null => {
  if (!facts.wrenches.has(wrench.instrumentId))
    return refuse(
      'WRENCH_UNKNOWN',
      `The wrench ${wrench.code} is not in the shop's register. Take one that is.`,
    )
  const lapse = calibrationLapse({ dueOn: wrench.dueOn, cycles: wrench.cyclesBefore }, facts.now.slice(0, 10))
  if (lapse === 'day')
    return refuse(
      'WRENCH_OVERDUE',
      `The wrench ${wrench.code} was due for calibration on ${wrench.dueOn}. Take another one.`,
    )
  if (lapse === 'cycles')
    return refuse(
      'WRENCH_OVERDUE',
      `The wrench ${wrench.code} has ${wrench.cyclesBefore} clicks; it is due at ${usualInterval.cycles}. Take another one.`,
    )
  const span = usableSpan(wrench)
  return isInSpan(figure, span)
    ? null
    : refuse(
        'WRENCH_OUT_OF_RANGE',
        `${figure.value} ${figure.unit} is outside what ${wrench.code} is good for (${span.low} to ${span.high} ${span.unit}). Take another wrench.`,
      )
}
