import { atOrBelow } from '../../pressure/threshold.ts'
import { magnitude } from '../../units/pressure-difference.ts'
import { thresholds } from '../thresholds.ts'
import type { Facts } from './facts.ts'
import type { WheelFacts } from './wheel-facts.ts'

/** More than 1.5 psi over or under its label figure, cold. */
export const isOffLabel = (wheel: WheelFacts): boolean =>
  wheel.deficit !== null && !atOrBelow(magnitude(wheel.deficit), thresholds.pressureRight)

/** Every road tire is known to hold its label figure within 1.5 psi. */
export const pressuresRight = (facts: Facts): boolean =>
  facts.road.every((wheel) => wheel.deficit !== null && !isOffLabel(wheel))
