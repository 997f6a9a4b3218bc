import type { Torque } from '../quantity.ts'
import type { TorqueRound } from './torque-rounds.ts'

/**
 * The figure of one round of tightening. The full round and the one after it have the vehicle maker's own figure, as
 * printed. The first round only draws the wheel flat against its hub at about half the figure. It need not be exact, so it
 * is rounded up to the next 5, or to the next whole number where 5 would be too coarse. No wheel is ready at that figure.
 *
 * @units As the maker prints it.
 * @limits Half is 50 to 60 % of the figure for figures of 10 and more.
 * @source The figure: the vehicle maker. The share: common practice, no source, a shop's own setting.
 */
export const roundTorque = (round: TorqueRound, figure: Torque, halfShare = 0.5): Torque => {
  if (round !== 'half') return figure
  const share = Math.round(figure.value * halfShare * 1e6) / 1e6
  const toFive = Math.ceil(share / 5) * 5
  return { ...figure, value: toFive <= figure.value * mostOfHalf ? toFive : Math.ceil(share) }
}

/** The first round must not come near the figure, however its half is rounded up. */
const mostOfHalf = 0.6
