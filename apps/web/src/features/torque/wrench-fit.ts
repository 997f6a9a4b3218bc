import type { Instrument } from '@bayledger/contract/settings'
import type { WrenchUsed } from '@bayledger/ledger/subjects/torque/kinds'
import type { Torque } from '@bayledger/reckoning/quantity'
import { calibrationLapse, cyclesLeft, usualInterval } from '@bayledger/reckoning/torque/calibration'
import type { TorqueRound } from '@bayledger/reckoning/torque/torque-rounds'
import { isInSpan, spanForRound } from '@bayledger/reckoning/torque/wrench-range'

export type Wrench = Extract<Instrument, { kind: 'wrench' }>

/** Why a wrench may not be used for a round today, in words; `undefined` when it may. `today` is YYYY-MM-DD. */
export const whyNotWrench = (
  wrench: Wrench,
  figure: Torque,
  today: string,
  round: TorqueRound = 'full',
): string | undefined => {
  if (wrench.quarantined) return 'Quarantined: leave it until it is checked on the bench.'
  const lapse = calibrationLapse(wrench, today)
  if (lapse === 'day') return `Overdue: calibration was due ${wrench.dueOn}.`
  if (lapse === 'cycles')
    return `Due: ${wrench.cycles.toLocaleString('en-US')} clicks of ${usualInterval.cycles.toLocaleString('en-US')}.`
  const span = spanForRound(round, wrench)
  if (!isInSpan(figure, span)) return `Out of range: it is good for ${span.low} to ${span.high} ${span.unit}.`
  return undefined
}

/** The wrench as its holder knows it now: what a sealed round keeps. */
export const wrenchUsed = (wrench: Wrench): WrenchUsed => ({
  instrumentId: wrench.instrumentId,
  code: wrench.code,
  dueOn: wrench.dueOn,
  cyclesBefore: wrench.cycles,
  rangeLow: wrench.rangeLow,
  rangeHigh: wrench.rangeHigh,
  rangeUnit: wrench.rangeUnit,
})

export const wrenchWords = (wrench: Wrench): string =>
  `due ${wrench.dueOn} · ${cyclesLeft(wrench.cycles).toLocaleString('en-US')} clicks left`
