import type { PlannedStep, StepCode } from '../step.ts'

/**
 * The steps, ordered so that the vehicle goes up once and comes down once: what is done on the floor first, then the
 * lift, every wheel off, the work on the bench, every wheel on, and after one lowering the torque rounds and the second
 * person's check; then what is done on the floor afterwards. Within each of these the steps keep their order, wheel by
 * wheel.
 *
 * @limits The vehicle maker's lift points and instructions govern.
 * @source Common practice, no source.
 */
export const liftOnce = (steps: readonly PlannedStep[]): PlannedStep[] =>
  steps.toSorted((one, other) => places.indexOf(placeOf(one)) - places.indexOf(placeOf(other)))

const places = [
  'floor',
  'lift',
  'off',
  'bench',
  'on',
  'touching',
  'rounds',
  'check',
  'down',
  'after',
] as const
type Place = (typeof places)[number]

const placeOf = ({ code, height }: PlannedStep): Place =>
  placesOfCodes[code] ?? (height === 'floor' ? 'floor' : 'bench')

const placesOfCodes: Readonly<Partial<Record<StepCode, Place>>> = {
  'lift-vehicle': 'lift',
  'take-wheel-off': 'off',
  'put-wheel-on': 'on',
  'lower-to-touching': 'touching',
  'torque-studs': 'rounds',
  'check-torque': 'check',
  'lower-fully': 'down',
  'stow-spare': 'after',
  'put-spare-back': 'after',
}
