import { newSpokenCode } from '../../core/spoken-code.ts'

/** Long enough to walk to the bay, too short to guess: 32^8 codes, ten tries a minute. */
export const codeMinutes = 10

/** So many codes are good at a time in all shops of a database, the newest: each costs 40 ms where one is typed. */
export const mostOpenCodes = 20

/** A tablet stays enrolled for 400 days at most without being enrolled again (the longest a browser keeps a cookie). */
export const enrolledSeconds = 400 * 24 * 60 * 60

export const newCode = (): string => newSpokenCode(2, 4)
