import { type Reading, refused, taken } from '../reading.ts'
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
  if (vin.length !== 17)
    return refused('length', {
      found: typed,
      allowed: `17 characters; this one has ${vin.length}`,
      do: 'Read it again at the windshield or the door.',
    })
  const odd = /[^A-HJ-NPR-Z0-9]/u.exec(vin)?.[0]
  if (odd !== undefined)
    return refused('character', {
      found: typed,
      allowed: 'digits and letters without I, O and Q',
      do: `"${odd}" is not used in a VIN. ${insteadOf[odd] ?? 'Read it again.'}`,
    })
  const differs = checkDigitDiffers(vin)
  if (differs !== null && vinRegion(vin)?.region === 'North America')
    return refused('check-digit', {
      found: typed,
      allowed: differs,
      do: 'One character was misread or two were exchanged. Read it again. If the vehicle itself carries it so, leave the VIN empty and note it.',
    })
  return taken({
    vin,
    advice: [
      ...(differs === null
        ? []
        : [`It does not carry ${differs}. Outside North America it need not; read it once more.`]),
      ...(/^(\d)\1*$/.test(vin)
        ? [
            `It is ${vin[0]} seventeen times: the arithmetic holds, and no vehicle carries it. Read the real one.`,
          ]
        : []),
    ],
  })
}

const checkDigitDiffers = (vin: string): string | null => {
  const wanted = vinCheckDigit(vin)
  return vin[8] === wanted ? null : `the check digit ${wanted} at the ninth place, not ${vin[8]}`
}

const insteadOf: Readonly<Record<string, string>> = {
  I: 'Is it a 1?',
  O: 'Is it a 0?',
  Q: 'Is it a 0 or a 9?',
}
