import { readSensorId } from '@bayledger/reckoning/sensor/read-sensor-id'
import type { IdNotation } from '@bayledger/reckoning/sensor/sensor-id'
import { inReadingOrder, readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { idFaults } from '../../lib/fault-words.ts'

export type IdsAtOnce =
  | {
      readonly ok: true
      readonly ids: Partial<Record<WheelPosition, string>>
      /** `null`: digits alone, which may be either. */
      readonly notation: IdNotation | null
    }
  | { readonly ok: false; readonly says: string }

/**
 * The IDs of all wheels in one text, as a reader copies or shows them: each after its wheel (LF 1A2B3C10), or as many
 * as there are wheels, in reading order. Nothing is guessed: any other number without the wheels' names is a fault.
 */
export const idsAtOnce = (text: string, wheels: readonly WheelPosition[]): IdsAtOnce => {
  const words = text.split(/[\s,;:=|]+/).filter((word) => word !== '')
  const named = words.some((word) => wheelOf(word) !== null)
  const pairs = named ? pairsOf(words) : words.map((word, index) => ({ wheel: wheels[index], word }))
  const isHex = pairs.some(({ word }) => /[a-f]/i.test(word.replace(/^0x/i, '')))
  const faulty = pairs.find(({ word }) => !isWholeId(word))
  if (faulty) return fault(idFaults.notWhole(faulty.word))
  if (!named && pairs.length !== wheels.length) return fault(idFaults.count(pairs.length, wheels.length))
  const stranger = pairs.find(({ wheel }) => wheel === undefined || !wheels.includes(wheel))
  if (stranger)
    return fault(
      stranger.wheel === undefined ? idFaults.noWheel(stranger.word) : idFaults.noneStored(stranger.wheel),
    )
  const ids = Object.fromEntries(pairs.map(({ wheel, word }) => [wheel, word]))
  if (Object.keys(ids).length !== pairs.length) return fault(idFaults.namedTwice)
  const digitsOnly = pairs.every(({ word }) => /^\d+$/.test(word))
  return { ok: true, ids, notation: isHex ? 'hex' : digitsOnly ? null : 'hex' }
}

/** "LF RF RR LR": the order in which IDs without wheels are taken. */
export const orderWords = (wheels: readonly WheelPosition[]): string => inReadingOrder([...wheels]).join(' ')

const fault = (says: string): IdsAtOnce => ({ ok: false, says })

const wheelOf = (word: string): WheelPosition | null =>
  readingOrder.find((wheel) => wheel === word.toUpperCase()) ?? null

/** Each ID with the wheel before it. */
const pairsOf = (words: readonly string[]): { wheel: WheelPosition | undefined; word: string }[] =>
  words.flatMap((word, index) => {
    if (wheelOf(word) !== null) return []
    return [{ wheel: wheelOf(words[index - 1] ?? '') ?? undefined, word }]
  })

/** More than four signs: four may only pick an ID that is known. */
const isWholeId = (word: string): boolean =>
  (['hex', 'decimal'] as const).some((notation) => {
    const read = readSensorId(word, notation)
    return read.ok && read.value.text.length > 4
  })
