import { AppError } from './app-error.ts'

/** A write over another version than the one that was read: both are handed back, so that nothing is retyped. */
export const staleVersion = (noun: string, current: unknown, sent: unknown): AppError =>
  new AppError(
    'VERSION_STALE',
    `Someone saved this ${noun} since you read it. Look at both versions, keep what is right, and save again.`,
    { current, sent },
  )
