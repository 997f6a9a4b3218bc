import { type Reading, refused, taken } from '../reading.ts'
import { sensorIdWords } from '../words/typed-text.ts'
import { type IdNotation, idKey, isOfASensor } from './sensor-id.ts'

/** An ID as it was entered (upper case, leading zeros kept, separators dropped) and the number it means. */
export type SensorIdText = { readonly text: string; readonly key: string }

export type SensorIdFault = 'empty' | 'character' | 'length' | 'notation' | 'none'

/**
 * Reads a sensor's ID as a reader, a label or a vehicle shows it. Blanks, colons, points and hyphens between the digits
 * are dropped. A leading 0x says that the text is hexadecimal. Nine or ten digits without a letter, said to be
 * hexadecimal, are refused with both numbers that they can mean: sensors have 32 bits as a rule, eight
 * hexadecimal digits, and it takes a decimal number to fill ten.
 *
 * @limits 16 digits
 * @source this program's own rule; the length of IDs is common practice, no source
 */
export const readSensorId = (typed: string, notation: IdNotation): Reading<SensorIdText, SensorIdFault> => {
  const trimmed = typed.trim()
  const saysHex = /^0x/i.test(trimmed)
  const text = (saysHex ? trimmed.slice(2) : trimmed).replace(/[\s:.\-–]/g, '').toUpperCase()
  if (text === '') return refused('empty', typed, sensorIdWords.empty)
  if (!/^[0-9A-F]+$/.test(text)) return refused('character', typed, sensorIdWords.character(notation))
  if (text.length > 16) return refused('length', typed, sensorIdWords.length(text.length))
  if (notation === 'decimal' && (saysHex || !/^\d+$/.test(text)))
    return refused('notation', typed, sensorIdWords.notDecimal)
  if (notation === 'hex' && !saysHex && looksDecimal(text))
    return refused('notation', typed, sensorIdWords.looksDecimal(idKey(text, 'decimal'), text))
  const key = idKey(text, notation)
  if (!isOfASensor(key)) return refused('none', typed, sensorIdWords.none)
  return taken({ text, key })
}

/** More digits than 32 bits have in hexadecimal, no letter among them, and a number of 32 bits if read as decimal. */
const looksDecimal = (text: string): boolean => /^\d{9,10}$/.test(text) && BigInt(text) <= 0xff_ff_ff_ffn
