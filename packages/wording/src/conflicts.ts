import type { Conflict } from '@bayledger/ledger/state'

/** One fact that two devices recorded differently, and what to do about it. */
export type ConflictsWording = (
  fact: Conflict['fact'],
  wheel: Conflict['wheel'],
  phase: Conflict['phase'],
) => string
