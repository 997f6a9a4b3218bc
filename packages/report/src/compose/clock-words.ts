import type { TorqueClock } from '@bayledger/ledger/questions/torque-clock'
import type { Timed } from '@bayledger/ledger/timed'
import type { Spoken } from './spoken.ts'

/** "48 s", "2 min 5 s", "22 min": seconds as a person says them. */
export const durationWords = (seconds: number): string => {
  const minutes = Math.floor(seconds / 60)
  const rest = seconds % 60
  if (minutes === 0) return `${rest} s`
  return [`${minutes} min`, ...(rest === 0 || minutes >= 10 ? [] : [`${rest} s`])].join(' ')
}

/** "torqued in 48 s, checked 6 min later"; `null` where nothing of it is known. */
export const torqueClockWords = (
  context: Spoken,
  { seconds, checkedAfterMinutes }: TorqueClock,
): string | null => {
  if (seconds === null && checkedAfterMinutes === null) return null
  const took = seconds === null ? null : durationWords(seconds)
  return context.language.report.torque.clock({ took, checkedAfterMinutes })
}

/**
 * "; it took 3 min 20 s by the tablet’s clock", or nothing where nobody timed it. Where the tablet slept or was started anew
 * meanwhile, that is said too.
 */
export const tookWords = (context: Spoken, timed: Timed, what: 'relearn' | 'light'): string =>
  timed === null
    ? ''
    : context.language.report.cells.took(what, durationWords(timed.seconds), timed.across !== undefined)
