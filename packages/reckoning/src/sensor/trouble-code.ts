import { type Reading, refused, taken } from '../reading.ts'
import { troubleCodeWords } from '../words/typed-text.ts'

/** A trouble code as people write it, and as a vehicle stores it. The failure type is the third byte, where shown. */
export type TroubleCode = {
  readonly text: string
  readonly bytes: readonly [number, number]
  readonly failureType: number | null
}

export type TroubleCodeFault = 'empty' | 'no-letter' | 'shape' | 'padding'

/**
 * The text of a code's two bytes: 47 50 is C0750; 00 00 is padding and no code, hence `null`. The maker
 * defines what a code means: no texts are kept here.
 *
 * @formula bits 15–14 the letter (P, C, B, U), bits 13–12 the first digit, then three hexadecimal digits
 * @limits two bytes, 0 to 255 each; of a larger number only the last eight bits count
 * @source SAE J2012 / ISO 15031-6 (encoding read in a public decoder and its tests, the standard itself not read)
 */
export const troubleCodeText = (high: number, low: number): string | null => {
  const code = ((high & 0xff) << 8) | (low & 0xff)
  if (code === 0) return null
  const rest = (code & 0xfff).toString(16).toUpperCase().padStart(3, '0')
  return `${letters[code >> 14]}${(code >> 12) & 3}${rest}`
}

/**
 * The codes in a run of bytes, two to a code, as a vehicle answers. Padding is left out; a last byte without its other
 * half is dropped, and the note says so.
 *
 * @source SAE J2012 / ISO 15031-6 (read in a public decoder and its tests, the standard itself not read)
 */
export const troubleCodesIn = (
  bytes: readonly number[],
): { readonly codes: readonly string[]; readonly note: string | null } => ({
  codes: bytes.flatMap((high, index) => {
    const low = bytes[index + 1]
    const code = index % 2 === 0 && low !== undefined ? troubleCodeText(high, low) : null
    return code === null ? [] : [code]
  }),
  note: bytes.length % 2 === 0 ? null : troubleCodeWords.lastByteAlone(bytes.length),
})

/**
 * Reads one trouble code as a reader shows it: letter P, C, B or U, a digit 0 to 3, three hexadecimal digits, then
 * perhaps the failure type in two more after a hyphen, a colon or a blank.
 *
 * @limits The code does not say whether any vehicle has it, or what it means there.
 * @source SAE J2012 / ISO 15031-6 (read in a public decoder and its tests, the standard itself not read)
 */
export const readTroubleCode = (typed: string): Reading<TroubleCode, TroubleCodeFault> => {
  const text = typed.trim().toUpperCase()
  if (text === '') return refused('empty', typed, troubleCodeWords.empty)
  const bare = /^([0-9A-F]{2})[ :-]?([0-9A-F]{2})$/.exec(text)
  if (bare) return refused('no-letter', typed, troubleCodeWords.noLetter(meantBy(bare)))
  const [, letter, digit, rest, failure] =
    /^([PCBU])([0-3])([0-9A-F]{3})(?:[ :-]([0-9A-F]{2}))?$/.exec(text) ?? []
  if (letter === undefined || digit === undefined || rest === undefined)
    return refused('shape', typed, troubleCodeWords.shape)
  const code = (letters.indexOf(letter) << 14) | (Number(digit) << 12) | Number.parseInt(rest, 16)
  if (code === 0) return refused('padding', typed, troubleCodeWords.padding)
  return taken({
    text: `${letter}${digit}${rest}${failure === undefined ? '' : `-${failure}`}`,
    bytes: [code >> 8, code & 0xff],
    failureType: failure === undefined ? null : Number.parseInt(failure, 16),
  })
}

const letters = 'PCBU'

const meantBy = ([, high = '', low = '']: RegExpExecArray): string | null =>
  troubleCodeText(Number.parseInt(high, 16), Number.parseInt(low, 16))
