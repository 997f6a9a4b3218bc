import type { PunctureRecord } from '@bayledger/ledger/subjects/arrival/kinds'
import { punctureLimits } from '@bayledger/reckoning/tire/puncture-limits'
import type { Row, RowValues } from '../form/rows.ts'

const millimetersPerInch = 25.4

const places = [
  { value: 'crown', label: 'Crown, between the outer grooves' },
  { value: 'shoulder', label: 'Shoulder' },
  { value: 'sidewall', label: 'Sidewall' },
] as const

const holeRow: Row = {
  kind: 'choice',
  key: 'hole',
  label: 'Hole through the tire',
  options: [
    { value: 'no', label: 'No hole' },
    { value: 'yes', label: 'A hole' },
  ],
}

/** What decides whether a hole may be repaired, asked only where there is one. */
export const punctureRows = (values: RowValues): readonly Row[] =>
  values.hole === 'yes'
    ? [
        holeRow,
        { kind: 'choice', key: 'place', label: 'Where the hole is', options: places },
        {
          kind: 'number',
          key: 'millimeters',
          label: 'Width of the hole',
          unit: 'mm',
          low: 0.5,
          high: 50,
          step: 1,
          hint: inchHint(values.millimeters),
        },
        {
          kind: 'number',
          key: 'degrees',
          label: 'Angle from straight through',
          unit: '°',
          low: 0,
          high: 90,
          step: 5,
        },
        {
          kind: 'choice',
          key: 'overlap',
          label: 'Earlier repair under it',
          options: [
            { value: 'no', label: 'None, or well apart' },
            { value: 'yes', label: 'Overlaps an earlier repair' },
          ],
        },
      ]
    : [holeRow]

/** The hole that was filled in; none where the technician saw none. */
export const puncturesOf = (values: RowValues): PunctureRecord[] => {
  const place = places.find(({ value }) => value === values.place)?.value
  return values.hole === 'yes' && place !== undefined
    ? [
        {
          place,
          millimeters: numberOf(values.millimeters),
          degrees: numberOf(values.degrees),
          overlapsRepair: values.overlap === 'yes',
        },
      ]
    : []
}

const numberOf = (text: string | null | undefined): number | null => (text ? Number(text) : null)

const inchHint = (text: string | null | undefined): string =>
  text
    ? `${(Number(text) / millimetersPerInch).toFixed(2)} in`
    : `At most ${punctureLimits.widestMillimeters} mm (1/4 in) may be repaired.`
