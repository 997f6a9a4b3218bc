/** The rounds of tightening, each a step of its own: half the figure, the figure, the figure again. */
export const torqueRounds = ['half', 'full', 'again'] as const
export type TorqueRound = (typeof torqueRounds)[number]
