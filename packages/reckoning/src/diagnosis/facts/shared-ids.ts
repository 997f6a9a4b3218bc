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
  const byKey = new Map<string, WheelFacts[]>()
  for (const wheel of wheels) {
    const key = wheel.sensor.idKey
    if (key !== null) byKey.set(key, [...(byKey.get(key) ?? []), wheel])
  }
  return [...byKey.values()].flatMap((sharing) => {
    const readTwice = sharing.every((wheel) => wheel.sensor.tries >= thresholds.spacedTries)
    return sharing.length > 1 && readTwice === (reads === 'read-twice') ? sharing : []
  })
}
