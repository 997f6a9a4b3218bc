import type { PlannedStep } from '../step.ts'

/**
 * The steps of all wheels, ordered so that the vehicle goes up once and comes down once: what is done on the floor
 * first, then every wheel off, the work on the bench, every wheel on, and after one lowering the torque rounds and the
 * second person's check. Within each of these the steps keep their order, wheel by wheel.
 *
 * @limits The vehicle maker's lift points and instructions govern.
 * @source Common practice, no source.
 */
export const liftOnce = (steps: readonly PlannedStep[]): PlannedStep[] =>
  steps.toSorted((one, other) => places.indexOf(placeOf(one)) - places.indexOf(placeOf(other)))

const places = ['floor', 'off', 'bench', 'on', 'rounds', 'check', 'floor-after'] as const
type Place = (typeof places)[number]

const placeOf = ({ code, height }: PlannedStep): Place => {
  if (height === 'floor') return code === 'stow-spare' ? 'floor-after' : 'floor'
  if (height === 'touching') return code === 'check-torque' ? 'check' : 'rounds'
  if (code === 'take-wheel-off') return 'off'
  return code === 'put-wheel-on' ? 'on' : 'bench'
}
