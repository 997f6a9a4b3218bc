import type { ReadingFault } from '@bayledger/reckoning/scan/read-wheel-readings'
import type { WheelReading } from '@bayledger/reckoning/scan/wheel-readings'

/** What a person reads of the readings of all wheels in one text. */

/** "ID 1A2B3C10 · 31.2 psi · 27 °F · battery good" */
export const readingWords = (reading: WheelReading): string => {
  if (reading.answer === 'not-tried') return 'not asked: nothing is recorded'
  if (reading.answer === 'silent')
    return reading.tries === 1 ? 'silent, asked once' : `silent, asked ${reading.tries} times`
  const { id, pressure, temperature, battery, frequencyMHz } = reading
  return [
    id === null ? 'answers, no ID shown' : `ID ${id}`,
    ...(pressure === null ? [] : [`${minus(pressure.value)} ${pressure.unit}`]),
    ...(temperature === null ? [] : [`${minus(temperature.value)} °${temperature.unit}`]),
    ...(battery === null ? [] : [batteryWords[battery]]),
    ...(frequencyMHz === null ? [] : [`${frequencyMHz} MHz`]),
  ].join(' · ')
}

const batteryWords = {
  ok: 'battery good',
  low: 'battery low',
  'not-reported': 'battery not reported',
} as const

const minus = (value: number): string => String(value).replace('-', '−')

/** "Line 2, RF, pressure: "31" has no unit. Write psi, kPa or bar after it; decimals have a point." */
export const readingFaultWords = ({ line, wheel, field, found, why }: ReadingFault): string =>
  `${[`Line ${line}`, ...(wheel === null ? [] : [wheel]), fieldWords[field]].join(', ')}: ${whyWords(why, found)}`

const fieldWords: Readonly<Record<ReadingFault['field'], string>> = {
  wheel: 'wheel',
  id: 'ID',
  pressure: 'pressure',
  temperature: 'temperature',
  battery: 'battery',
  frequency: 'frequency',
  tries: 'times asked',
  end: 'end of the line',
}

const whyWords = (why: ReadingFault['why'], found: string): string => {
  const is = found === '' ? 'Nothing' : `"${found}"`
  switch (why.code) {
    case 'not-a-wheel':
      return `${is} is no wheel. Begin the line with LF, RF, RR, LR or SP and a comma.`
    case 'wheel-twice':
      return 'the wheel comes twice, so neither line is taken. Leave one of them out.'
    case 'id-twice':
      return `${is} comes twice, so neither line is taken. Read both sensors again.`
    case 'too-many-fields':
      return `${is} is one field too many. Decimals have a point, not a comma.`
    case 'is-a-vin':
      return `${is} is a VIN. Put the ID of the sensor there.`
    case 'id-too-short':
      return `${is} is too short. Put the whole ID there.`
    case 'not-an-id':
      return `${is} is not taken. Allowed: ${why.allowed}. ${why.do} Where the reader shows none, write a hyphen.`
    case 'no-number':
      return `${is} has no figure. Write one with its unit, or a hyphen where the reader shows none.`
    case 'no-unit':
      return `${is} has no unit that is known here. Write ${orWords(why.units)} after the figure; decimals have a point.`
    case 'out-of-range':
      return `${is} cannot be: allowed is ${minus(why.least)} to ${why.most} ${why.unit}. Read it again.`
    case 'not-a-battery':
      return `${is} is no state of a battery. Write ok, low or not-reported, or a hyphen.`
    case 'not-a-count':
      return `${is} is no number from 1 to 99.`
  }
}

const orWords = (words: readonly string[]): string =>
  words.length === 1 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`
