import { thresholds } from '../thresholds.ts'
import type { WheelFacts } from './wheel-facts.ts'

/**
 * The wheels at which one ID was read more than once over: either those where every one of them was read twice,
 * spaced, or those where at least one was not and a cross-read is the likelier story.
 */
export const wheelsSharingAnId = (
  wheels: readonly WheelFacts[],
  reads: 'read-twice' | 'not-read-twice',
): WheelFacts[] => {
  const share = (one: WheelFacts, other: WheelFacts): boolean => one.sensor.idKey === other.sensor.idKey
  const isShared = (wheel: WheelFacts): boolean =>
    wheel.sensor.idKey !== null && wheels.some((other) => other !== wheel && share(wheel, other))
  const isReadTwice = (wheel: WheelFacts): boolean =>
    wheels.every((other) => !share(wheel, other) || other.sensor.tries >= thresholds.spacedTries)
  return wheels.filter((wheel) => isShared(wheel) && isReadTwice(wheel) === (reads === 'read-twice'))
}
