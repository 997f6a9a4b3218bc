import { randomInt } from 'node:crypto'

/** Without 0, O, 1 and I, which are taken for one another when read aloud. */
const alphabet = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ'

/** A random code that is read aloud or typed from paper, in groups with a dash between them: five bits a sign. */
export const newSpokenCode = (groups: number, signsEach: number): string =>
  Array.from({ length: groups }, () =>
    Array.from({ length: signsEach }, () => alphabet[randomInt(alphabet.length)]).join(''),
  ).join('-')

/** As it is compared: however it was typed. */
export const plainCode = (typed: string): string => typed.toUpperCase().replace(/[^A-Z0-9]/g, '')
