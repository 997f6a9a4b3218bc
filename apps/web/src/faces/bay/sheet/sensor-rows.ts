import type { EnteredFigure } from '@bayledger/contract/sheets'
import { tooLong } from '../../../lib/fault-words.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'
import { number, options, readFrom, sourceRows, text } from './row-parts.ts'
import { watchesRow } from './system-rows.ts'

/** The rows of what the vehicle requires of a sensor, or that it has none. */
export const sensorRows = (values: RowValues): readonly Row[] => [
  watchesRow,
  ...(values.system === 'direct'
    ? ([
        {
          kind: 'choice',
          key: 'megahertz',
          label: 'Frequency, MHz',
          options: options(['315', '433.92', '2400']),
        },
        {
          kind: 'text',
          key: 'protocol',
          label: 'Protocol, as the reader names it',
          fault: (text: string) => tooLong(text, 200),
        },
        { kind: 'choice', key: 'stem', label: 'Stem', options: options(['snap-in', 'clamp-in']) },
        {
          kind: 'choice',
          key: 'wokenBy',
          label: 'Woken by',
          options: [
            { value: 'low-frequency-field', label: 'the reader’s field' },
            { value: 'pressure-drop', label: 'letting air out' },
            { value: 'magnet', label: 'a magnet' },
          ],
        },
        {
          kind: 'number',
          key: 'fit',
          label: values.stem === 'clamp-in' ? 'Stem nut torque' : 'Stem screw torque',
          unit: 'lbf·in',
          low: 5,
          high: 200,
          limits: { whole: 4, decimals: 1 },
        },
        {
          kind: 'number',
          key: 'core',
          label: 'Valve core torque',
          unit: 'lbf·in',
          low: 1,
          high: 20,
          limits: { whole: 4, decimals: 1 },
        },
        ...sourceRows({ value: 'sensor maker’s application sheet', label: 'Sensor maker’s sheet' }),
      ] as const)
    : []),
]

const noSensors = ({ system }: RowValues): EnteredFigure => ({
  figure: 'no-sensors',
  system: system === 'indirect' ? 'indirect' : 'none',
})

const sensed = (values: RowValues): EnteredFigure => {
  const fit = { value: number(values, 'fit'), unit: 'lbf·in' } as const
  const isClamped = values.stem === 'clamp-in'
  return {
    figure: 'frequency',
    sensor: {
      frequencyMHz: number(values, 'megahertz'),
      protocol: text(values, 'protocol'),
      stem: isClamped ? 'clamp-in' : 'snap-in',
      mounting: 'valve',
      wokenBy: text(values, 'wokenBy') as 'low-frequency-field' | 'pressure-drop' | 'magnet',
      stemNutTorque: isClamped ? fit : null,
      stemScrewTorque: isClamped ? null : fit,
      coreTorque: { value: number(values, 'core'), unit: 'lbf·in' },
    },
    ...readFrom(values),
  }
}

/** The sensor that the rows describe, or that there is none. */
export const sensorIn = (values: RowValues): EnteredFigure =>
  values.system === 'direct' ? sensed(values) : noSensors(values)
