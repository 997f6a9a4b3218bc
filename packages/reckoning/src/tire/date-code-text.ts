import type { BuildDate } from './read-date-code.ts'

/**
 * A date code as the tire carries it; `readDateCode` reads the same date from it again.
 *
 * @formula WWYY, or WWY where the decade is not known
 * @source 49 CFR 574.5(b)(3) (quoted); three digits: 64 FR 36807 (read)
 */
export const dateCodeText = ({ week, year, decadeKnown }: BuildDate): string =>
  `${String(week).padStart(2, '0')}${decadeKnown ? String(year).slice(2) : String(year).slice(3)}`
