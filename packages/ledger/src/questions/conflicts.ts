import type { Conflict, OrderState } from '../state.ts'

/** Facts that two devices recorded differently; a person withdraws one. */
export const openConflicts = (state: OrderState): Conflict[] => state.conflicts.filter(({ agree }) => !agree)
