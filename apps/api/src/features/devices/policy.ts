import { randomInt } from 'node:crypto'

/** Long enough to walk to the bay, too short to guess: 32^8 codes, ten tries a minute. */
export const codeMinutes = 10

/** A tablet stays enrolled for 400 days at most without being enrolled again (the longest a browser keeps a cookie). */
export const enrolledSeconds = 400 * 24 * 60 * 60

/** Without 0, O, 1 and I, which are taken for one another when read aloud. */
const alphabet = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ'

export const newCode = (): string =>
  Array.from({ length: 8 }, () => alphabet[randomInt(alphabet.length)])
    .join('')
    .replace(/^(.{4})/, '$1-')

/** As it is compared: however it was typed. */
export const plainCode = (typed: string): string => typed.toUpperCase().replace(/[^A-Z0-9]/g, '')
