import type { Evidence } from '../../evidence/evidence-schema.ts'
import type { Known } from './known.ts'
import { lowTire } from './low-tire.ts'
import { malfunction } from './malfunction.ts'

export type TelltaleState = 'off' | 'solid' | 'flash'

export type TelltalePrediction = {
  /** The one state that the evidence leaves, else `undetermined`. */
  readonly state: TelltaleState | 'undetermined'
  /** Every state that the evidence leaves. */
  readonly allows: readonly TelltaleState[]
}

/**
 * What the warning light should be doing, by the regulation and from the evidence alone: lit steadily while a tire is
 * at or under its warning point, flashing and then lit while the system cannot hear a sensor, dark otherwise. It looks
 * at no rule and at no finding, so that it can be held against them: where the light that was seen is none of the
 * states it allows, the diagnosis must name a contradiction.
 *
 * Nothing is claimed of a vehicle that monitors nothing or whose system is not known, nor within 20 minutes of driving
 * after work on the wheels, the time that the regulation gives the system.
 *
 * @source 49 CFR 571.138 S4.2 (low pressure), S4.3 (the light), S4.4 (malfunction: flash 60 to 90 seconds, then
 * lit) (read)
 */
export const predictTelltale = (evidence: Evidence): TelltalePrediction => {
  const allows = allowedStates(evidence)
  const [only, ...others] = allows
  return { state: only !== undefined && others.length === 0 ? only : 'undetermined', allows }
}

const everyState: readonly TelltaleState[] = ['off', 'solid', 'flash']

const allowedStates = (evidence: Evidence): readonly TelltaleState[] => {
  const system = evidence.vehicle?.system
  if (system !== 'direct' && system !== 'indirect') return everyState
  // A light that stays dark at key-on is dark whatever the system would have it do.
  if (evidence.light?.lampCheck === 'dark') return ['off']
  if (mayNotHaveJudgedYet(evidence)) return everyState
  const low = lowTire(evidence)
  return everyState.filter((state) =>
    system === 'direct' ? directAllows[state](low, malfunction(evidence)) : indirectAllows[state](low),
  )
}

type Allows = (low: Known, fault: Known) => boolean

/** A malfunction is shown before a low tire: the flash hides it. */
const directAllows: Readonly<Record<TelltaleState, Allows>> = {
  flash: (_low, fault) => fault !== 'no',
  solid: (low, fault) => low !== 'no' && fault !== 'yes',
  off: (low, fault) => low !== 'yes' && fault !== 'yes',
}

/**
 * A system without wheel sensors may be lit until somebody resets it, and no evidence of the wheels shows whether it
 * has a fault.
 */
const indirectAllows: Readonly<Record<TelltaleState, (low: Known) => boolean>> = {
  flash: () => true,
  solid: () => true,
  off: (low) => low !== 'yes',
}

const work = ['serviced-today', 'topped-up-before-arrival', 'sensor-fitted-today']

/** The regulation gives the system 20 minutes of driving to see a change. */
const minutesAllowed = 20

const mayNotHaveJudgedYet = ({ events, surroundings }: Evidence): boolean =>
  (surroundings?.minutesDriven ?? 0) < minutesAllowed &&
  (events ?? []).some(({ kind, happened }) => happened !== false && work.includes(kind))
