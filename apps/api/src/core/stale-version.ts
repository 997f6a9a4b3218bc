import type { ProblemValues } from '@bayledger/wording/problems'
import { AppError } from './app-error.ts'

/** A write over another version than the one that was read: both are handed back, so that nothing is retyped. */
export const staleVersion = (
  what: ProblemValues['VERSION_STALE']['what'],
  current: unknown,
  sent: unknown,
): AppError => new AppError({ code: 'VERSION_STALE', what }, { current, sent })

/** A write to a record that was merged into another one meanwhile: what was typed is handed back with the record that holds now. */
export const recordMerged = (
  what: ProblemValues['RECORD_MERGED']['what'],
  into: string,
  current: unknown,
  sent: unknown,
): AppError => new AppError({ code: 'RECORD_MERGED', what, into }, { current, sent })
