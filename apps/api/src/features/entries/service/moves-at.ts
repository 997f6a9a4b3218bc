import type { Move } from '@bayledger/ledger/questions/move'
import type { AgendaStage } from '../store/projections/head.ts'

export type { AgendaStage }

/** The moves that hold at an instant: nothing is written because time passed. */
export const movesAt = (agenda: readonly AgendaStage[], now: string): readonly Move[] =>
  agenda.findLast(({ from }) => from === null || from <= now)?.moves ?? []
