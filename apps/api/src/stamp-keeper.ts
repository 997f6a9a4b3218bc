import type { Parts } from './deps.ts'
import { stampLateReports } from './features/reports/service/stamp-reports.ts'

export type StampKeeper = { readonly keep: () => void; readonly stop: () => Promise<void> }

const lookEveryMs = 60_000

/** Asks once a minute for the time-stamps that reports lack; where no authority is set it does nothing. */
export const stampKeeper = (
  parts: Pick<Parts, 'pool' | 'clock' | 'stamping'>,
  problem: (words: string, error: unknown) => void,
): StampKeeper => {
  let working: Promise<unknown> | null = null
  let timer: NodeJS.Timeout | undefined
  const look = () => {
    working ??= stampLateReports(parts)
      .catch((error: unknown) => problem('Time-stamps of reports could not be looked at.', error))
      .finally(() => {
        working = null
      })
  }
  return {
    keep: () => {
      if (parts.stamping.host === null) return
      timer = setInterval(look, lookEveryMs)
      timer.unref()
      look()
    },
    stop: async () => {
      clearInterval(timer)
      await working
    },
  }
}
