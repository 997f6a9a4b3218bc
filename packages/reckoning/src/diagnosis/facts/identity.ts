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

/** Wheels whose sensor the vehicle holds at another of these positions, also while a third wheel is silent. */
export const movedPositions = (facts: Facts, among: readonly WheelFacts[]): WheelPosition[] => {
  if (!facts.sensing) return []
  const { keys } = facts.stored
  return among
    .filter(
      ({ position, sensor }) =>
        sensor.idKey !== null &&
        keys[position] !== sensor.idKey &&
        among.some((other) => other.position !== position && keys[other.position] === sensor.idKey),
    )
    .map(({ position }) => position)
}

/** Every monitored wheel sent an ID that the vehicle holds, at whatever position. */
export const allIdsStored = (facts: Facts): boolean =>
  storedIsKnown(facts) &&
  facts.monitored.every(({ sensor }) => sensor.idKey !== null && facts.stored.all.has(sensor.idKey))

/** Its ID is on another vehicle's record in this shop. */
export const isKnownElsewhere = (facts: Facts, wheel: WheelFacts, elsewhere: ReadonlySet<string>): boolean =>
  facts.sensing && wheel.sensor.idKey !== null && elsewhere.has(wheel.sensor.idKey)
