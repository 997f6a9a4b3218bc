import type { LoadClass } from '../sheet.ts'
import { loadLetters, type TireSize } from './tire-size.ts'

/** Why a tire of this kind does not take the place of the sheet's. */
export type ClassRefusal =
  | 'passenger-for-light-truck'
  | 'lower-load-range'
  | 'standard-for-extra-load'
  | 'not-high-load'
  | 'not-commercial'

/**
 * Whether a tire is a passenger tire, as against one for light trucks, trailers or commercial use.
 *
 * @source common practice, no source: the letters of a size
 */
export const isPassengerTire = (size: TireSize): boolean =>
  size.kind === 'metric' && size.suffix === null && size.prefix !== 'LT' && size.prefix !== 'ST'

/**
 * What of the load class speaks against a tire in the place of the one that the sheet names: a passenger tire where the label
 * calls for a light-truck one, a lower load range, standard load for extra load, and neither for high load. The vehicle
 * maker's label governs; that a tire is of the right class does not say that it carries the load (`loadCheck`).
 *
 * @source a passenger tire never for a light-truck one: a tire dealer's page (read); lower ranges and standard for extra load
 * refused: common practice, no source
 */
export const classRefusal = (bySheet: LoadClass, fitted: TireSize): ClassRefusal | null => {
  const passenger = isPassengerTire(fitted)
  if (bySheet.startsWith('LT')) {
    if (passenger) return 'passenger-for-light-truck'
    const range = letterOf(fitted)
    return range !== null && rank(range) < rank(bySheet.slice(3)) ? 'lower-load-range' : null
  }
  if (bySheet === 'C') return passenger ? 'not-commercial' : null
  if (!passenger) return null
  const isHigh = fitted.kind === 'metric' && fitted.prefix === 'HL'
  if (bySheet === 'HL') return isHigh ? null : 'not-high-load'
  return bySheet === 'XL' && !isHigh && fitted.loadMark !== 'XL' ? 'standard-for-extra-load' : null
}

const letterOf = ({ loadMark }: TireSize): string | null =>
  loadMark !== null && (loadLetters as readonly string[]).includes(loadMark) ? loadMark : null

const rank = (letter: string): number => (loadLetters as readonly string[]).indexOf(letter)
