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

/**
 * The key of the step in which a wheel goes on its hub.
 *
 * @source This program's own rule.
 */
export const wheelOnKey = (wheel: WheelPosition): string => `${wheel}.wheel.on`

/**
 * The keys of the steps that move the vehicle on the lift.
 *
 * @source This program's own rule.
 */
export const liftKeys = {
  up: 'vehicle.lift.up',
  touching: 'vehicle.lift.touching',
  down: 'vehicle.lift.down',
} as const

/**
 * The key of a wheel's look inside its tire.
 *
 * @source This program's own rule.
 */
export const insideKey = (wheel: WheelPosition): string => `${wheel}.tire.inside`
