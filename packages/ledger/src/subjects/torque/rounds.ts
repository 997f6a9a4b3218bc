import { type TorqueRound, torqueRounds } from '@bayledger/reckoning/torque/torque-rounds'
import type { OvertakenRound, WheelWork } from '../../state.ts'

/** A wheel whose rounds of these kinds, and second check, no longer count; they stay on record. */
export const withoutRounds = (work: WheelWork, stale: readonly TorqueRound[]): WheelWork => ({
  ...work,
  rounds: Object.fromEntries(
    Object.entries(work.rounds).filter(([round]) => !stale.includes(round as TorqueRound)),
  ),
  overtaken: [
    ...work.overtaken,
    ...validRounds(work).filter(({ round }) => round === 'check' || stale.includes(round)),
  ],
  checked: null,
})

/** The rounds that count, in the order of the work, the second person's check last. */
export const validRounds = ({ rounds, checked }: WheelWork): OvertakenRound[] => [
  ...torqueRounds.flatMap((round) => {
    const seal = rounds[round]
    return seal ? [{ ...seal, round }] : []
  }),
  ...(checked ? [{ ...checked, round: 'check' as const }] : []),
]
