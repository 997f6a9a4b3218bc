import type { Ready } from '@bayledger/contract/orders'
import { type Clock, clockTimeOrDay } from '../../lib/format.ts'

/** "ready about 3:40 PM": an estimate, which is no promise. `now` is UTC text. */
export const readyWords = (ready: Ready, now: string, clock: Clock): string =>
  ready.is === 'part-without-date'
    ? 'part without a date'
    : `ready about ${clockTimeOrDay(ready.at, now, clock)}`
