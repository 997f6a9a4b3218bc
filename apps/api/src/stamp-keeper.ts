import { inRounds, type Rounds } from './core/in-rounds.ts'
import type { Parts } from './deps.ts'
import { stampLateReports } from './features/reports/service/stamp-reports.ts'

const lookEveryMs = 60_000

/** Asks once a minute for the time-stamps that reports lack; where no authority is set it does nothing. */
export const stampKeeper = (
  parts: Pick<Parts, 'pool' | 'clock' | 'stamping'>,
  problem: (words: string, error: unknown) => void,
): Rounds => {
  const rounds = inRounds(
    lookEveryMs,
    () => stampLateReports(parts),
    (error) => problem('Time-stamps of reports could not be looked at.', error),
  )
  return { ...rounds, keep: parts.stamping.host === null ? () => undefined : rounds.keep }
}
