import { firstPasswordMs } from '../policy.ts'

/** Until when a password is taken that was given at an instant to somebody who has not chosen it. */
export const firstPasswordUntil = (givenAt: Date): Date => new Date(givenAt.getTime() + firstPasswordMs)
