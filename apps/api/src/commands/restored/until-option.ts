import { BackupProblem } from '@bayledger/db/backup/backup-problem'
import { instantOf } from '@bayledger/reckoning/ready/zoned-time'

/**
 * Reads "2026-11-28 14:03" by the shop's clocks, or an instant with its zone such as "2026-11-28T19:03:00Z". The minute
 * itself is left out: everything before it is taken.
 */
export const untilIn = (text: string, timeZone: string): Date => {
  const [, day, time] = /^(\d{4}-\d\d-\d\d)[ T](\d\d:\d\d)$/.exec(text.trim()) ?? []
  const instant = day === undefined || time === undefined ? withZone(text) : instantOf(day, time, timeZone)
  if (instant !== null) return new Date(instant)
  throw new BackupProblem(
    `--until is "${text}"; write a day and a time by the shop's clocks, such as "2026-11-28 14:03", or an instant with its zone, such as 2026-11-28T19:03:00Z.`,
  )
}

const withZone = (text: string): string | null =>
  /T.*(Z|[+-]\d\d:\d\d)$/.test(text) && !Number.isNaN(Date.parse(text)) ? text : null
