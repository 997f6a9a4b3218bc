import { readSensorId } from '@bayledger/reckoning/sensor/read-sensor-id'
import { type IdNotation, idKey, idText } from '@bayledger/reckoning/sensor/sensor-id'
import { idFaults, noSensorId } from '../../lib/fault-words.ts'

/** An ID that is already known of this vehicle, with what it is known from; in the notation of the screen it is for. */
export type KnownId = { readonly id: string; readonly says: string }

/**
 * The ID that a typed text means, in the notation it was typed in: a whole one as it is; four signs only if exactly one
 * known ID ends in them. Four typed signs may pick an ID and never make one.
 */
export const idMeant = (
  text: string,
  known: readonly KnownId[],
  notation: IdNotation = 'hex',
): string | null => {
  const read = readSensorId(text, notation)
  if (!read.ok) return null
  const typed = read.value.text
  if (typed.length > 4) return typed
  const ending = new Map(
    known
      .filter(({ id }) => typed.length === 4 && id.toUpperCase().endsWith(typed))
      .map(({ id }) => [idKey(id, notation), id]),
  )
  const [only] = ending.values()
  return ending.size === 1 && only !== undefined ? only : null
}

/** What is wrong with a typed ID and what to do; `undefined` when it means one sensor. */
export const idFault = (
  text: string,
  known: readonly KnownId[],
  notation: IdNotation = 'hex',
): string | undefined => {
  if (idMeant(text, known, notation) !== null) return undefined
  const read = readSensorId(text, notation)
  if (read.ok) return idFaults.noKnownEnd
  return read.fault === 'empty' ? undefined : noSensorId(read)
}

/** IDs in a text that has several, separated by blanks, commas or semicolons. */
export const severalIds = (text: string): string[] => text.split(/[\s,;]+/).filter((one) => one !== '')

/** What is wrong with the first of several IDs that is not a whole one. */
export const severalIdsFault = (text: string): string | undefined =>
  severalIds(text)
    .map((one) => idFault(one, []))
    .find((fault) => fault !== undefined)

/** Known IDs as a vehicle shows them that writes its own in a notation. */
export const knownIn = (known: readonly KnownId[], notation: IdNotation): readonly KnownId[] =>
  notation === 'hex' ? known : known.map(({ id, says }) => ({ id: idText(idKey(id, 'hex'), notation), says }))

/** Each ID once, the first mention kept. */
export const withoutRepeats = (known: readonly KnownId[]): KnownId[] => {
  const seen = new Set<string>()
  return known.filter(({ id }) => {
    const key = idKey(id, 'hex')
    if (seen.has(key)) return false
    seen.add(key)
    return true
  })
}

/** The end of an ID, by which people distinguish sensors. */
export const lastFour = (id: string): string => id.toUpperCase().slice(-4)
