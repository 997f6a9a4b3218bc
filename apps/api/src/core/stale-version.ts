import type { ProblemValues } from '@bayledger/wording/problems'
import { AppError } from './app-error.ts'

/** A write over another version than the one that was read: both are handed back, so that nothing is retyped. */
export const staleVersion = (
  what: ProblemValues['VERSION_STALE']['what'],
  current: unknown,
  sent: unknown,
): AppError => new AppError({ code: 'VERSION_STALE', what }, { current, sent })
