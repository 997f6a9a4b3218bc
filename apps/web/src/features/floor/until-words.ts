import type { FloorRow } from '@bayledger/contract/orders'

/** "Waiting for the part, until Jan 14, 10:00 AM.": a sentence with the time that somebody named for its end, if anybody did. */
export const untilNamed = (
  sentence: string,
  until: string | null,
  when: (instant: string) => string,
): string => (until === null ? sentence : `${sentence.replace(/\.$/, '')}, until ${when(until)}.`)

/**
 * What a row waits for before anything else, where that is a time that somebody named. `agreed`: with the customer, who has the
 * vehicle meanwhile or brings it again, so that the time of the promise is no longer meant.
 */
export const namedWait = ({ moves: [first] }: FloorRow): { until: string; agreed: boolean } | null =>
  first?.mover === 'waiting-until' && first.until !== null
    ? {
        until: first.until,
        agreed: ['trial-drive', 'customer-returns'].includes(String(first.values.reason)),
      }
    : null
