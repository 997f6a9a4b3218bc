import type { TorqueClock } from '@bayledger/ledger/questions/torque-clock'
import type { Timed } from '@bayledger/ledger/timed'

/** "48 s", "2 min 5 s", "22 min": seconds as a person says them. */
export const durationWords = (seconds: number): string => {
  const minutes = Math.floor(seconds / 60)
  const rest = seconds % 60
  if (minutes === 0) return `${rest} s`
  return rest === 0 || minutes >= 10 ? `${minutes} min` : `${minutes} min ${rest} s`
}

/** "torqued in 48 s, checked 6 min later"; `null` where nothing of it is known. */
export const torqueClockWords = ({ seconds, checkedAfterMinutes }: TorqueClock): string | null => {
  const parts = [
    ...(seconds === null ? [] : [`torqued in ${durationWords(seconds)}`]),
    ...(checkedAfterMinutes === null
      ? []
      : [`checked ${checkedAfterMinutes === 0 ? 'within a minute' : `${checkedAfterMinutes} min later`}`]),
  ]
  return parts.length === 0 ? null : parts.join(', ')
}

/** "; it took 3 min 20 s by the tablet’s clock", or nothing where nobody timed it. */
export const tookWords = (timed: Timed, what: string): string =>
  timed === null ? '' : `; ${what} ${durationWords(timed.seconds)} by the tablet’s clock`
