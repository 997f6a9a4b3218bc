import { type Reading, refused, taken } from '../reading.ts'
import { vinWords } from '../words/typed-text.ts'
import { vinCheckDigit } from './check-digit.ts'
import { vinRegion } from './region.ts'

export type VinFault = 'length' | 'character' | 'check-digit'

/** A possible VIN with advice: something odd that deserves a second look but is no reason to refuse it. */
export type Vin = { readonly vin: string; readonly advice: readonly string[] }

/**
 * Reads a vehicle identification number: 17 digits and capital letters without I, O and Q; blanks and hyphens are
 * dropped. In North America (first character 1 to 5) the ninth character must be the check digit of the others;
 * elsewhere it need not be one, so a difference there is advice. A number that is one digit 17 times passes that
 * arithmetic, and no vehicle carries it: advice too.
 *
 * @limits The number does not show whether such a vehicle was ever built.
 * @source 49 CFR 565 (characters, length and check digit: read); that other markets need no check digit: from memory
 */
export const readVin = (typed: string): Reading<Vin, VinFault> => {
  const vin = typed.toUpperCase().replace(/[\s-]/g, '')
  if (vin.length !== 17) return refused('length', typed, vinWords.length(vin.length))
  const odd = /[^A-HJ-NPR-Z0-9]/u.exec(vin)?.[0]
  if (odd !== undefined) return refused('character', typed, vinWords.character(odd))
  const [wanted, carried] = [vinCheckDigit(vin), vin.charAt(8)]
  const differs = wanted !== carried
  if (differs && vinRegion(vin)?.region === 'North America')
    return refused('check-digit', typed, vinWords.checkDigit(wanted, carried))
  return taken({
    vin,
    advice: [
      ...(differs ? [vinWords.adviseCheckDigit(wanted, carried)] : []),
      ...(/^(\d)\1*$/.test(vin) ? [vinWords.adviseOneDigit(vin.charAt(0))] : []),
    ],
  })
}
