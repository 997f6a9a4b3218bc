import type { OrderState } from '@bayledger/ledger/state'
import type { Phase } from '@bayledger/ledger/subjects/arrival/kinds'
import type { Temperature } from '@bayledger/reckoning/quantity'
import { temperatureIn } from '@bayledger/reckoning/units/temperature-units'
import { readingOrder } from '@bayledger/reckoning/wheels'
import type { RowOption } from '../../../ui/rows/rows.ts'

export const tiresOptions = [
  { value: 'cold', label: 'Cold', detail: 'stood three hours or more' },
  { value: 'driven', label: 'Driven', detail: 'warm from the road' },
  { value: 'indoor-warmed', label: 'Warmed indoors', detail: 'stood in the bay' },
] as const

/** Degrees Fahrenheit as a pad shows them, to a tenth at most. */
export const fahrenheitOf = (temperature: Temperature): string =>
  String(temperature.unit === 'F' ? temperature.value : Math.round(temperatureIn('F', temperature) * 10) / 10)

/**
 * What a sensor is likely to read: as the one that was read last in this check, and on arrival as it is outdoors, where
 * the tires are cold. Each is taken by a press, never by itself.
 */
export const likelyTemperatures = (state: OrderState, phase: Phase): readonly RowOption[] => {
  const read = readingOrder.flatMap((wheel) => {
    const sensor = state[phase].wheels[wheel]?.sensor
    return sensor?.reading.answer === 'answered' && sensor.reading.temperature
      ? [{ wheel, seq: sensor.written.seq, temperature: sensor.reading.temperature }]
      : []
  })
  const last = read.sort((one, other) => other.seq - one.seq)[0]
  const noted = phase === 'arrival' ? state.surroundings?.surroundings : undefined
  const options = [
    ...(last ? [{ value: fahrenheitOf(last.temperature), detail: `same as ${last.wheel}` }] : []),
    ...(noted?.tires === 'cold' ? [{ value: fahrenheitOf(noted.outdoor), detail: 'same as outdoors' }] : []),
  ]
  return options
    .filter(({ value }, index) => options.findIndex((other) => other.value === value) === index)
    .map(({ value, detail }) => ({ value, label: `${value.replace('-', '−')} °F`, detail }))
}
