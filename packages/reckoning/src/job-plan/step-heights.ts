import type { StepCode, StepHeight } from '../step.ts'
import type { WheelPosition } from '../wheels.ts'

/**
 * How high the vehicle is during a step. A spare is worked on where it lies, so its steps need no lift.
 *
 * @limits The vehicle maker's lift points and instructions govern.
 * @source Common practice, no source.
 */
export const stepHeight = (code: StepCode, wheel: WheelPosition | null): StepHeight =>
  wheel === 'SP' ? 'floor' : heights[code]

const heights: Readonly<Record<StepCode, StepHeight>> = {
  'confirm-placard': 'floor',
  'confirm-stud-torque': 'floor',
  'confirm-frequency': 'floor',
  'find-leak': 'floor',
  'match-tire': 'floor',
  'match-sensor': 'floor',
  'program-sensor': 'floor',
  'read-other-wheel': 'floor',
  'check-tires-for-rotation': 'floor',
  'take-spare-out': 'floor',
  'take-sound-spare-out': 'floor',
  'lift-vehicle': 'lifted',
  'take-wheel-off': 'lifted',
  'repair-fastener': 'lifted',
  'purge-sealant': 'lifted',
  'purge-in-restraint': 'lifted',
  'find-leak-after-look': 'lifted',
  'open-tire': 'lifted',
  'look-inside': 'lifted',
  'judge-leak': 'lifted',
  'repair-leak': 'lifted',
  'fit-sensor': 'lifted',
  'renew-stem': 'lifted',
  'read-in-rim': 'lifted',
  'seat-tire': 'lifted',
  'seat-in-restraint': 'lifted',
  'torque-core': 'lifted',
  'put-core-back': 'lifted',
  'inflate-tire': 'lifted',
  'inflate-in-restraint': 'lifted',
  'check-leaks': 'lifted',
  'balance-wheel': 'lifted',
  'put-wheel-on': 'lifted',
  'lower-to-touching': 'touching',
  'torque-studs': 'touching',
  'check-torque': 'touching',
  'lower-fully': 'floor',
  'torque-after-miles': 'floor',
  'stow-spare': 'floor',
  'put-spare-back': 'floor',
  'set-pressure': 'floor',
  relearn: 'floor',
  'learning-drive': 'floor',
  'confirm-learned': 'floor',
  'read-sensor': 'floor',
  'compare-stored': 'floor',
  'proof-drive': 'floor',
  'see-light': 'floor',
  'last-look': 'floor',
}
