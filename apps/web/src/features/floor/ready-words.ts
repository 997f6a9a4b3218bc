import type { FloorRow, Ready } from '@bayledger/contract/orders'
import { type Clock, clockTimeOrDay } from '../../lib/format.ts'
import { floorMarks } from './floor-marks.ts'
import { namedWait } from './until-words.ts'

/** "ready about 3:40 PM": an estimate, which is no promise. `now` is UTC text. */
export const readyWords = (ready: Ready, now: string, clock: Clock): string =>
  ready.is === 'part-without-date'
    ? 'part without a date'
    : `ready about ${clockTimeOrDay(ready.at, now, clock)}`

/**
 * The times at the end of a row: when it is ready, and by when that was promised or until when it waits. Few words, so that the
 * sentence before them is read: "about 3:40", "by 4:00 PM". `asOf` is UTC text, empty before it is known.
 */
export const rowTimes = (
  row: FloorRow,
  asOf: string,
  clock: Clock,
): { readonly ready: string | null; readonly due: string | null; readonly isLate: boolean } => {
  const { isLate } = floorMarks(row, asOf)
  const said = (instant: string) => clockTimeOrDay(instant, asOf || instant, clock)
  const wait = namedWait(row)
  const promised = row.promisedAt === null ? null : said(row.promisedAt)
  // Its sentence says how late it will be.
  const slips = row.moves.some(({ code }) => code === 'promise-slips')
  const ready =
    row.ready === null || slips
      ? null
      : row.ready.is === 'about'
        ? `about ${withoutHalf(said(row.ready.at), promised)}`
        : 'part without a date'
  if (wait?.agreed || (wait && promised === null)) return { ready, due: `until ${said(wait.until)}`, isLate }
  return { ready, due: promised === null ? null : `${isLate ? 'late, ' : 'by '}${promised}`, isLate }
}

/** "3:40" before a time of the same half of the same day: its AM or PM says it for both. */
const withoutHalf = (time: string, next: string | null): string => {
  const [hour, half] = time.split('\u00a0')
  const isAlike = next !== null && !/[a-z]/.test(time + next) && next.endsWith(`\u00a0${half}`)
  return isAlike ? (hour ?? time) : time
}
