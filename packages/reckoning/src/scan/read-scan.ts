import type { Refusal } from '../reading.ts'
import { readSensorId } from '../sensor/read-sensor-id.ts'
import { readVin, type VinFault } from '../vehicle/vin.ts'
import { WheelPosition } from '../wheels.ts'
import { isProductCode } from './product-code.ts'
import { type ScannedText, scannedText } from './scanned-text.ts'

/** Everything that a scanned text can be. A label may carry several of them, a scan that went wrong none. */
export type Scan = {
  /** As it was scanned, without what the scanner added. */
  readonly text: string
  readonly vin: string | null
  /** As long as a VIN and none: what is wrong with it. */
  readonly misreadVin: Refusal<VinFault> | null
  /** Each once; a label has one, a list of all wheels several. */
  readonly sensorIds: readonly string[]
  /** It says so itself, or eight signs with a letter among them: nothing but a sensor is numbered so. */
  readonly isSurelySensor: boolean
  /** As the stock list spells it. */
  readonly listedPart: string | null
  /** What may be the number of a part that the list does not know. */
  readonly otherPart: string | null
  /** The number under which a shop sells something. */
  readonly isProductCode: boolean
  /** Lines that begin with a wheel, or several IDs. */
  readonly isOfSeveralWheels: boolean
}

/**
 * What a scanned text is: a VIN, a sensor's ID, a part number, a list of wheels, or none of them. Nothing is put right:
 * a VIN with a wrong check digit stays misread.
 *
 * @limits `listedParts` are the part numbers of the shop's stock; a VIN in a text of several fields is the first one
 * that holds
 * @source I before a VIN, P and 1P before a part: ANS MH10.8.2 (read in a list of its identifiers); the words by which
 * labels name an ID: common practice, no source
 */
export const readScan = (raw: string, listedParts: readonly string[]): Scan => {
  const scanned = scannedText(raw)
  const { vin, misread } = vinIn(scanned)
  const productCode = isProductCode(scanned.text)
  const labelled = labelledIds(scanned.text)
  const sensorIds =
    vin !== null || productCode ? [] : withoutRepeats(labelled.length > 0 ? labelled : bareIds(scanned))
  const listedPart = vin === null ? partIn(scanned, listedParts) : null
  const isNothingElse = vin === null && misread === null && listedPart === null
  return {
    text: scanned.text,
    vin,
    misreadVin: vin === null && listedPart === null ? misread : null,
    sensorIds,
    isSurelySensor: labelled.length > 0 || sensorIds.some((id) => /^(?=.*[A-F])[0-9A-F]{8}$/i.test(id)),
    listedPart,
    otherPart: isNothingElse ? otherPartIn(scanned) : null,
    isProductCode: productCode,
    isOfSeveralWheels: sensorIds.length > 1 || /^(LF|RF|RR|LR|SP)\b/im.test(scanned.text),
  }
}

/** A VIN with blanks in it is one piece; else it stands between signs that no VIN has, as in an address. */
const vinIn = ({ text, pieces }: ScannedText) => {
  const spaced = pieces.map((piece) => piece.replace(/^(VIN|FIN)\b\W*/i, '').replace(/[\s-]/g, ''))
  const words = text.split(/[^A-Za-z0-9]+/)
  const long = [...spaced, ...words]
    .map((one) => (/^I/i.test(one) && one.length === 18 ? one.slice(1) : one))
    .filter((one) => /^(?=.*\d)[A-Za-z0-9]{17}$/.test(one))
  const readings = long.map(readVin)
  const good = readings.find((reading) => reading.ok)
  const misread = readings.find((reading) => !reading.ok)
  return { vin: good?.value.vin ?? null, misread: misread ?? null }
}

const labelledIds = (text: string): string[] =>
  [...text.matchAll(idLabel)].flatMap(([, id = '']) => (isWholeId(id) ? [id] : []))

const idLabel =
  /(?<![A-Z0-9])(?:SENSOR[ _-]?ID|SENSOR|ID|S\/?N|SERIAL)(?![A-Z])\s*[:=#.]?\s*((?:0x)?[0-9A-F]{5,16})(?![A-Z0-9])/gi

/** Pieces that are IDs whole; a list of nothing but IDs and wheels may have several in one piece. */
const bareIds = ({ pieces }: ScannedText): string[] =>
  pieces.flatMap((piece) => {
    const words = piece.split(/[\s:=]+/).filter((word) => !isWheel(word))
    if (words.every(isWholeId)) return words
    return isWholeId(piece) ? [piece] : []
  })

const isWheel = (word: string): boolean => WheelPosition.options.some((wheel) => wheel === word.toUpperCase())

/** More than four signs: four may only pick an ID that is known. */
const isWholeId = (text: string): boolean =>
  (['hex', 'decimal'] as const).some((notation) => {
    const read = readSensorId(text, notation)
    return read.ok && read.value.text.length > 4
  })

const withoutRepeats = (ids: readonly string[]): string[] => [
  ...new Set(ids.map((id) => id.toUpperCase().replace(/[\s:.\-–]/g, ''))),
]

const partLabel = /^(?:P\/?N|PART(?: ?(?:NO|NUMBER))?)(?![A-Za-z])[\s:.#=]*/i

const asCompared = (part: string): string => part.toUpperCase().replace(/\s/g, '')

const partIn = ({ text, pieces }: ScannedText, listed: readonly string[]): string | null => {
  const candidates = [text, ...pieces]
    .flatMap((piece) => [piece, piece.replace(partLabel, ''), piece.replace(/^1?P/i, '')])
    .map(asCompared)
  return listed.find((part) => candidates.includes(asCompared(part))) ?? null
}

/** One field of a label, with a digit in it and no sign that part numbers do not have. */
const otherPartIn = ({ text, pieces }: ScannedText): string | null => {
  const named = pieces.find((piece) => partLabel.test(piece))
  const part = named === undefined ? text : named.replace(partLabel, '')
  return /^(?=.*\d)[A-Za-z0-9][A-Za-z0-9 ./_-]{1,59}$/.test(part) && !/\/\//.test(part) ? part : null
}
