import type { SensorAnswer } from '@bayledger/ledger/subjects/arrival/kinds'
import { pressureIn } from '@bayledger/reckoning/units/pressure-units'
import { temperatureIn } from '@bayledger/reckoning/units/temperature-units'
import type { KnownId } from '../../../features/sensor-ids/id-text.ts'
import { idFault, idMeant, lastFour } from '../../../features/sensor-ids/id-text.ts'
import { knownIdWords } from '../../../features/sensor-ids/known-ids.ts'
import { tooLong } from '../../../lib/fault-words.ts'
import { numberFrom } from '../../../ui/number-text.ts'
import type { RowOption, RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'
import { highestTirePsi } from './pressure-bounds.ts'

/** What one press may say about a sensor: that it answers with an ID that is stored or expected here. */
const sameAs = 'same:'

const answerRow = (expected: readonly KnownId[], mayBeExcused: boolean): Row => ({
  kind: 'choice',
  key: 'answer',
  label: 'Sensor',
  options: [
    ...expected.map((one) => ({
      value: `${sameAs}${one.id}`,
      label: `Answers, ${one.says}`,
      detail: `ID ends in ${lastFour(one.id)}`,
    })),
    {
      value: 'answered',
      label: 'Answers',
      ...(expected.length === 0 ? {} : { detail: 'with another ID, or none shown' }),
    },
    { value: 'silent', label: 'Silent', detail: 'asked and did not answer' },
    ...(mayBeExcused ? [{ value: cannotBeAsked, label: 'Cannot be asked', detail: 'say why' }] : []),
  ],
})

/** Not read at all, with a reason: neither a no nor a yes. */
export const cannotBeAsked = 'cannot'

const why: Row = {
  kind: 'text',
  key: 'why',
  label: 'Reason',
  hint: 'It is recorded as could not be checked, and stays so on the report.',
  suggestions: ['no reader for it here', 'wheel out of reach', 'no sensor fitted', 'reader out of order'].map(
    (reason) => ({ value: reason, label: reason }),
  ),
  fault: (text) => tooLong(text, 200),
}

const tries: Row = {
  kind: 'choice',
  key: 'tries',
  label: 'Times asked',
  isShort: true,
  hint: 'All tries together. Silent counts after two: turn the wheel a quarter, hold the reader at the stem.',
  options: ['1', '2', '3', '4', '5', '6', '7', '8'].map((value) => ({ value, label: `${value}×` })),
}

type SensorQuestion = {
  /** Part numbers of the stock: none of them is a sensor's ID. */
  readonly listedParts: readonly string[]
  readonly known: readonly KnownId[]
  /** IDs that are stored for this wheel or are to be expected on it. */
  readonly expected: readonly KnownId[]
  /** Temperatures that one press may take. */
  readonly temperatures: readonly RowOption[]
  /** On arrival a sensor that cannot be read is excused with a reason. */
  readonly mayBeExcused: boolean
  /** The row that is requested by name; only then are rare readings offered. */
  readonly asked: string | undefined
}

/** Rows for a sensor reading; a silent sensor has only its number of tries. */
export const sensorRows = (values: RowValues, question: SensorQuestion): readonly Row[] => {
  const { known, expected, temperatures, mayBeExcused, asked, listedParts } = question
  const answer = answerRow(expected, mayBeExcused)
  if (values.answer === 'silent') return [answer, tries]
  if (values.answer === cannotBeAsked) return [answer, why]
  if (!values.answer) return [answer]
  const isSame = values.answer.startsWith(sameAs)
  const id: Row = {
    kind: 'text',
    key: 'id',
    label: 'Sensor ID',
    hex: true,
    hint: 'Pick, paste or scan it; the last four signs pick a known one.',
    suggestions: known.slice(0, 4).map((one) => ({ value: one.id, label: knownIdWords(one) })),
    scan: { wanted: 'sensor-id', listedParts },
    fault: (text) => idFault(text, known),
    optional: 'not shown',
    asked: true,
  }
  return [
    answer,
    ...(isSame ? [] : [id]),
    {
      kind: 'number',
      key: 'temperature',
      label: 'Temperature',
      unit: '°F',
      low: -150,
      high: 600,
      signed: true,
      limits: { whole: 3, decimals: 0 },
      suggestions: temperatures,
      optional: 'not shown',
      asked: true,
    },
    {
      kind: 'number',
      key: 'pressure',
      label: 'Pressure',
      unit: 'psi',
      low: -10,
      high: highestTirePsi,
      optional: 'not shown',
      asked: true,
    },
    ...shownByFew.map((row): Row => (row.key === asked ? row : { ...row, aside: true })),
    ...askedOnly.filter(({ key }) => key === asked),
  ]
}

/** What only some readers show. Nothing is filled in for anyone: a frequency is read or it is not. */
const shownByFew: readonly Row[] = [
  {
    kind: 'choice',
    key: 'battery',
    label: 'Battery',
    optional: 'not shown',
    options: [
      { value: 'ok', label: 'Good' },
      { value: 'low', label: 'Low' },
      { value: 'not-reported', label: 'Not reported' },
    ],
  },
  {
    kind: 'number',
    key: 'frequency',
    label: 'Frequency',
    unit: 'MHz',
    low: 100,
    high: 3_000,
    limits: { whole: 4, decimals: 2 },
    optional: 'not shown',
  },
]

const askedOnly: readonly Row[] = [
  {
    kind: 'choice',
    key: 'follows',
    label: 'Follows a change',
    optional: 'not tested',
    options: [
      { value: 'yes', label: 'Follows', detail: 'of 3 psi or more' },
      { value: 'no', label: 'Stays put' },
    ],
  },
  {
    kind: 'number',
    key: 'learnRefusals',
    label: 'Refused to learn',
    unit: 'times',
    low: 0,
    high: 99,
    limits: { whole: 2, decimals: 0 },
    optional: 'not known',
    hint: 'Relearns that left this sensor out while they learned others.',
  },
]

/** What was filled in, as the ledger takes it; what was left out stays null. `triesBefore` were silent ones. */
export const sensorAnswerOf = (
  values: RowValues,
  known: readonly KnownId[],
  triesBefore: number,
): SensorAnswer | null => {
  if (values.answer === 'silent')
    return { answer: 'silent', tries: numberFrom(values.tries ?? '') ?? triesBefore + 1 }
  if (!values.answer || values.answer === cannotBeAsked) return null
  const pressure = numberFrom(values.pressure ?? '')
  const temperature = numberFrom(values.temperature ?? '')
  return {
    answer: 'answered',
    tries: triesBefore + 1,
    id: values.answer.startsWith(sameAs)
      ? values.answer.slice(sameAs.length)
      : idMeant(values.id ?? '', known),
    pressure: pressure === null ? null : { value: pressure, unit: 'psi' },
    temperature: temperature === null ? null : { value: temperature, unit: 'F' },
    battery: batteries.find((one) => one === values.battery) ?? null,
    frequencyMHz: numberFrom(values.frequency ?? ''),
    followsPressure: values.follows === 'yes' ? true : values.follows === 'no' ? false : null,
    learnRefusals: numberFrom(values.learnRefusals ?? ''),
  }
}

const batteries = ['ok', 'low', 'not-reported'] as const

/** The rows as filled in from an earlier reading, to be completed. */
export const rowsAsHeard = (reading: SensorAnswer): RowValues => {
  if (reading.answer !== 'answered') return {}
  const { pressure, temperature, id, battery, frequencyMHz, followsPressure, learnRefusals } = reading
  return {
    answer: 'answered',
    pressure: pressure === null ? null : asTyped(pressureIn('psi', pressure)),
    temperature: temperature === null ? null : asTyped(temperatureIn('F', temperature)),
    id,
    ...(battery === null ? {} : { battery }),
    ...(frequencyMHz === null ? {} : { frequency: String(frequencyMHz) }),
    ...(followsPressure === null ? {} : { follows: followsPressure ? 'yes' : 'no' }),
    ...(learnRefusals == null ? {} : { learnRefusals: String(learnRefusals) }),
  }
}

const asTyped = (value: number): string => String(Math.round(value * 10) / 10)
