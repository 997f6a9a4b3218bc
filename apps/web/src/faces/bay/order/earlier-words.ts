import type { HistoryEvidence } from '@bayledger/reckoning/evidence/evidence'
import { readingOrder } from '@bayledger/reckoning/wheels'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { pressureText } from '../../../lib/format.ts'

/** What the shop's records hold of one wheel from before this visit. */
export type EarlierWheel = { readonly name: string; readonly says: string }

/**
 * Each wheel of which the records hold something: its last pressure, psi, with how long before this visit that was, and whether
 * we worked on it in the days that make a comeback.
 */
export const earlierWords = ({ earlierReadings, ourWorkOn }: HistoryEvidence): EarlierWheel[] =>
  readingOrder.flatMap((wheel) => {
    const read = earlierReadings?.find((one) => one.wheel === wheel)
    const said = [
      ...(ourWorkOn?.includes(wheel) ? ['we worked on it'] : []),
      ...(read
        ? [
            `last read ${pressureText({ value: read.pressure, unit: 'psi' })} psi, ${before(read.daysAgo)}${read.gauge ? `, gauge ${read.gauge}` : ''}`,
          ]
        : []),
    ]
    return said.length === 0 ? [] : [{ name: wheelNames[wheel], says: said.join('; ') }]
  })

const before = (days: number): string => {
  const whole = Math.round(days)
  if (whole === 0) return 'on the day of this visit'
  return `${whole} ${whole === 1 ? 'day' : 'days'} before this visit`
}
