import { money } from './format.ts'

/** A sum as money, or that it is not shown here: what was withheld never reads as nothing. */
export const moneyWords = (cents: number | null | undefined): string =>
  typeof cents === 'number' ? money(cents) : 'not shown here'
