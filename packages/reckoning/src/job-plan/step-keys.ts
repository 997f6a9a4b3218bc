import type { TorqueRound } from '../torque/torque-rounds.ts'
import type { WheelPosition } from '../wheels.ts'

/**
 * The key of a wheel's step for one round of tightening.
 *
 * @source This program's own rule.
 */
export const torqueRoundKey = (wheel: WheelPosition, round: TorqueRound): string =>
  `${wheel}.studs.torque-${round}`

/**
 * The key of the step in which a second person checks a wheel's torque.
 *
 * @source This program's own rule.
 */
export const torqueCheckKey = (wheel: WheelPosition): string => `${wheel}.studs.second-check`

/**
 * The key of the step in which damaged fasteners of a wheel are renewed.
 *
 * @source This program's own rule.
 */
export const repairFastenerKey = (wheel: WheelPosition): string => `${wheel}.studs.repair`
