import type { WheelPosition } from '../../wheels.ts'
import type { Facts } from './facts.ts'
import type { WheelFacts } from './wheel-facts.ts'

/** Whether all of the vehicle's stored IDs were read, so that any other ID is known not to be stored. */
export const storedIsKnown = (facts: Facts): boolean =>
  facts.sensing && facts.stored.state === 'read' && facts.stored.complete

/** Its sensor sent an ID that the vehicle holds at no position. */
export const isUnknownToVehicle = (facts: Facts, wheel: WheelFacts): boolean =>
  storedIsKnown(facts) && wheel.sensor.idKey !== null && !facts.stored.all.has(wheel.sensor.idKey)

/** All four road wheels sent an ID, and the vehicle holds none of them. */
export const isOtherWheelSet = (facts: Facts): boolean =>
  facts.road.length === 4 && facts.road.every((wheel) => wheel.monitored && isUnknownToVehicle(facts, wheel))

/** A stored ID that no wheel sent, although the wheel at its position sent another. */
export const isStoredUnheard = (facts: Facts, wheel: WheelFacts): boolean => {
  const stored = facts.sensing ? facts.stored.keys[wheel.position] : null
  return (
    stored !== null &&
    wheel.sensor.idKey !== null &&
    !facts.wheels.some((other) => other.sensor.idKey === stored)
  )
}

/** Positions whose sensor the vehicle holds at another position, where the IDs heard and stored are the same set. */
export const permutedPositions = (facts: Facts, among: readonly WheelFacts[]): WheelPosition[] => {
  const isInPlace = (wheel: WheelFacts): boolean => wheel.sensor.idKey === facts.stored.keys[wheel.position]
  if (!facts.sensing || among.every(isInPlace)) return []
  const heard = among.map((wheel) => wheel.sensor.idKey)
  const stored = new Set(among.map((wheel) => facts.stored.keys[wheel.position]))
  const sameSet =
    new Set(heard).size === among.length &&
    stored.size === among.length &&
    heard.every((key) => key !== null && stored.has(key))
  if (!sameSet) return []
  return among.filter((wheel) => !isInPlace(wheel)).map((wheel) => wheel.position)
}

/** Every monitored wheel sent exactly the ID that the vehicle holds for its position. */
export const allIdsInPlace = (facts: Facts): boolean =>
  storedIsKnown(facts) &&
  facts.monitored.every(
    (wheel) => wheel.sensor.idKey !== null && wheel.sensor.idKey === facts.stored.keys[wheel.position],
  )

/** Its ID is on another vehicle's record in this shop. */
export const isKnownElsewhere = (facts: Facts, wheel: WheelFacts, elsewhere: ReadonlySet<string>): boolean =>
  facts.sensing && wheel.sensor.idKey !== null && elsewhere.has(wheel.sensor.idKey)
