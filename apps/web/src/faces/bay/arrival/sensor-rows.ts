import type { SensorAnswer } from '@bayledger/ledger/subjects/arrival/kinds'
import { pressureIn } from '@bayledger/reckoning/units/pressure-units'
import { temperatureIn } from '@bayledger/reckoning/units/temperature-units'
import type { KnownId } from '../../../features/sensor-ids/id-text.ts'
import { idFault, idMeant } from '../../../features/sensor-ids/id-text.ts'
import { knownIdWords } from '../../../features/sensor-ids/known-ids.ts'
import { numberFrom } from '../../../ui/number-text.ts'
import type { Row, RowValues } from '../form/rows.ts'
import { highestTirePsi } from './pressure-bounds.ts'

const answer: Row = {
  kind: 'choice',
  key: 'answer',
  label: 'Sensor',
  options: [
    { value: 'answered', label: 'Answers' },
    { value: 'silent', label: 'Silent', detail: 'asked and did not answer' },
  ],
}

const tries: Row = {
  kind: 'number',
  key: 'tries',
  label: 'Times asked',
  unit: 'times',
  low: 1,
  high: 99,
  limits: { whole: 2, decimals: 0 },
  step: 1,
  hint: 'All tries together. Silent counts after two: turn the wheel a quarter, hold the reader at the stem.',
}

/** Rows for a sensor reading; a silent sensor has only its number of tries. */
export const sensorRows = (values: RowValues, known: readonly KnownId[]): readonly Row[] => {
  if (values.answer === 'silent') return [answer, tries]
  if (values.answer !== 'answered') return [answer]
  return [
    answer,
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
    {
      kind: 'number',
      key: 'temperature',
      label: 'Temperature',
      unit: '°F',
      low: -150,
      high: 600,
      signed: true,
      limits: { whole: 3, decimals: 0 },
      optional: 'not shown',
      asked: true,
    },
    {
      kind: 'text',
      key: 'id',
      label: 'Sensor ID',
      hex: true,
      hint: 'Pick, paste or scan it; the last four signs pick a known one.',
      suggestions: known.slice(0, 4).map((one) => ({ value: one.id, label: knownIdWords(one) })),
      fault: (text) => idFault(text, known),
      optional: 'not shown',
      asked: true,
    },
    {
      kind: 'choice',
      key: 'battery',
      label: 'Battery',
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
}

/** What was filled in, as the ledger takes it; what was left out stays null. `triesBefore` were silent ones. */
export const sensorAnswerOf = (
  values: RowValues,
  known: readonly KnownId[],
  triesBefore: number,
): SensorAnswer | null => {
  if (values.answer === 'silent')
    return { answer: 'silent', tries: numberFrom(values.tries ?? '') ?? triesBefore + 1 }
  if (values.answer !== 'answered') return null
  const pressure = numberFrom(values.pressure ?? '')
  const temperature = numberFrom(values.temperature ?? '')
  return {
    answer: 'answered',
    tries: triesBefore + 1,
    id: idMeant(values.id ?? '', known),
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
