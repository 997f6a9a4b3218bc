import { sensorKey } from '@bayledger/ledger/sensor-key'

/** An ID that is already known of this vehicle, with what it is known from. */
export type KnownId = { readonly id: string; readonly says: string }

/** What a reader shows or a clipboard holds, as an ID: separators and a leading 0x dropped, upper case. */
export const idFromText = (text: string): string =>
  text
    .trim()
    .replace(/^0x/i, '')
    .replace(/[\s:.\-–]/g, '')
    .toUpperCase()

/**
 * The ID that a typed text means: a whole one as it is; four signs only if exactly one known ID ends in them. Four
 * typed signs may pick an ID and never make one.
 */
export const idMeant = (text: string, known: readonly KnownId[]): string | null => {
  const typed = idFromText(text)
  if (!/^[0-9A-F]{1,16}$/.test(typed)) return null
  if (typed.length > 4) return typed
  const ending = new Map(
    known
      .filter(({ id }) => typed.length === 4 && id.toUpperCase().endsWith(typed))
      .map(({ id }) => [sensorKey(id), id]),
  )
  const [only] = ending.values()
  return ending.size === 1 && only !== undefined ? only : null
}

/** What is wrong with a typed ID and what to do; `undefined` when it means one sensor. */
export const idFault = (text: string, known: readonly KnownId[]): string | undefined => {
  const typed = idFromText(text)
  if (typed === '' || idMeant(text, known) !== null) return undefined
  if (!/^[0-9A-F]*$/.test(typed))
    return `"${text}" is no sensor ID: an ID has the digits 0 to 9 and the letters A to F.`
  if (typed.length > 16) return 'An ID has 16 signs at most. Read it again.'
  return 'Up to four signs only pick a known ID, and none known ends so. Type the whole ID.'
}

/** Each ID once, the first mention kept. */
export const withoutRepeats = (known: readonly KnownId[]): KnownId[] => {
  const seen = new Set<string>()
  return known.filter(({ id }) => {
    const key = sensorKey(id)
    if (seen.has(key)) return false
    seen.add(key)
    return true
  })
}

/** The end of an ID, by which people tell sensors apart. */
export const lastFour = (id: string): string => id.toUpperCase().slice(-4)
