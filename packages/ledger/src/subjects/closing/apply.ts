import { closeStep } from '../../fold/close-step.ts'
import { type Appliers, recorded } from '../../fold/foldable.ts'
import { isSettleable } from '../../questions/open-holds.ts'
import { isDriven } from '../../questions/proof.ts'
import type { OrderState } from '../../state.ts'
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
  // A drive whose minutes are settled may be all that the proof waited for.
  'hold.settled': (state, entry) => {
    const { entryId } = entry.payload
    const ends = (hold: OrderState['holds'][number]) => isSettleable(hold, entryId)
    const settled = {
      ...state,
      holds: state.holds.filter((hold) => !ends(hold)),
      settledHolds: [
        ...state.settledHolds,
        ...state.holds.filter(ends).map((hold) => recorded({ hold, words: entry.payload.words }, entry)),
      ],
    }
    const drive = state.drives.find(({ written }) => written.entryId === entryId)
    const closes = drive && !state.closed[drive.stepKey] && isDriven(settled)
    return closeStep(settled, closes ? drive.stepKey : null, entry)
  },
  // Which entry is struck is settled before anything is applied.
  'entry.struck': (state) => state,
}
