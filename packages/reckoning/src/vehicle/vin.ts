/** Why a text is not a VIN, in words that tell what to do. */
export type VinFault = {
  readonly fault: 'length' | 'character' | 'check-digit'
  readonly allowed: string
  readonly do: string
}

export type ReadVin =
  | { readonly ok: true; readonly vin: string; readonly advice: string | null }
  | ({ readonly ok: false } & VinFault)

/**
 * Reads a vehicle identification number: 17 digits and capital letters without I, O and Q; blanks and hyphens are
 * dropped. In North America (first character 1 to 5) the ninth character must be the check digit of the others;
 * elsewhere it need not be one, so a difference there is advice (49 CFR 565.15; ISO 3779).
 */
export const readVin = (typed: string): ReadVin => {
  const vin = typed.toUpperCase().replace(/[\s-]/g, '')
  if (vin.length !== 17)
    return {
      ok: false,
      fault: 'length',
      allowed: `17 characters; this one has ${vin.length}`,
      do: 'Read it again at the windshield or the door.',
    }
  const odd = /[^A-HJ-NPR-Z0-9]/.exec(vin)?.[0]
  if (odd !== undefined)
    return {
      ok: false,
      fault: 'character',
      allowed: 'digits and letters without I, O and Q',
      do: `"${odd}" is not used in a VIN. Is it a 1 or a 0?`,
    }
  const wanted = vinCheckDigit(vin)
  if (vin[8] === wanted) return { ok: true, vin, advice: null }
  const allowed = `the check digit ${wanted} at the ninth place, where ${vin[8]} stands`
  if (!isNorthAmerican(vin))
    return {
      ok: true,
      vin,
      advice: `It does not carry ${allowed}. Outside North America it need not; read it once more.`,
    }
  return {
    ok: false,
    fault: 'check-digit',
    allowed,
    do: 'One character was misread or two were exchanged. Read it again. If the vehicle itself carries it so, leave the VIN empty and note it.',
  }
}

/** The ninth character that the other sixteen demand: weighted sum modulo 11, X for 10 (49 CFR 565.15(c)). */
export const vinCheckDigit = (vin: string): string => {
  const sum = weights.reduce<number>((total, weight, index) => total + weight * worthOf(vin[index] ?? ''), 0)
  return sum % 11 === 10 ? 'X' : String(sum % 11)
}

const isNorthAmerican = (vin: string): boolean => /^[1-5]/.test(vin)

const worthOf = (character: string): number => letterValues[character] ?? Number(character)

const letterValues: Readonly<Record<string, number>> = Object.fromEntries(
  ['ABCDEFGH', 'JKLMN', 'STUVWXYZ']
    .flatMap((letters, row) => [...letters].map((letter, index) => [letter, index + (row === 2 ? 2 : 1)]))
    .concat([
      ['P', 7],
      ['R', 9],
    ]),
)

const weights = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2] as const
