import { type Appliers, recorded } from '../../fold/foldable.ts'
import { isClockHold } from '../../questions/clock-holds.ts'
import type { closingKinds } from './kinds.ts'

export const applyClosing: Appliers<keyof typeof closingKinds> = {
  'report.sealed': (state, entry) => ({
    ...state,
    reports: [
      ...state.reports,
      recorded({ ...entry.payload, reportNumber: entry.given.reportNumber ?? null }, entry),
    ],
  }),
  'order.handed_back': (state, entry) => ({ ...state, handedBack: recorded(entry.payload, entry) }),
  'order.refused': (state, entry) => ({
    ...state,
    ended: recorded({ how: 'refused' as const, ...entry.payload }, entry),
  }),
  'order.withdrawn': (state, entry) => ({
    ...state,
    ended: recorded({ how: 'withdrawn' as const, ...entry.payload }, entry),
  }),
  'hold.settled': (state, entry) => ({
    ...state,
    holds: state.holds.filter((hold) => !isClockHold(hold, entry.payload.entryId)),
  }),
  // Which entry is struck is settled before anything is applied.
  'entry.struck': (state) => state,
}
