import type { PunctureRecord } from '@bayledger/ledger/subjects/arrival/kinds'
import { punctureLimits } from '@bayledger/reckoning/tire/puncture-limits'
import type { RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'

const millimetersPerInch = 25.4

/** More holes than these are no tire to repair. */
const mostHoles = 3

const places = [
  { value: 'crown', label: 'Crown, between the outer grooves' },
  { value: 'shoulder', label: 'Shoulder' },
  { value: 'sidewall', label: 'Sidewall' },
] as const

type Looked = 'outside' | 'inside'

/** Keys of the first hole are plain; those of a later one carry its number. */
const keyOf = (name: string, hole: number): string => (hole === 1 ? name : `${name}${hole}`)

const holeRow = (hole: number): Row => ({
  kind: 'choice',
  key: keyOf('hole', hole),
  label: hole === 1 ? 'Hole through the tire' : 'Another hole',
  options: [
    { value: 'no', label: hole === 1 ? 'No hole' : 'No other hole' },
    { value: 'yes', label: hole === 1 ? 'A hole' : 'Another hole' },
  ],
})

const millimeterRow = (key: string, label: string, high: number, rest: Partial<Row>): Row =>
  ({ kind: 'number', key, label, unit: 'mm', low: 0.5, high, step: 1, ...rest }) as Row

/** Of a hole that is only seen from outside, with the object in it, place and width are asked as far as they show. */
const outsideRows = (values: RowValues, hole: number): readonly Row[] => [
  {
    kind: 'choice',
    key: keyOf('place', hole),
    label: hole === 1 ? 'Where the puncture is' : 'Where that one is',
    options: places,
    optional: 'cannot be seen',
  },
  millimeterRow(keyOf('millimeters', hole), 'Width, as seen', 50, {
    optional: 'not measured',
    hint: inchHint(values[keyOf('millimeters', hole)]),
  }),
]

const insideRows = (values: RowValues, hole: number): readonly Row[] => [
  { kind: 'choice', key: keyOf('place', hole), label: 'Where the hole is', options: places },
  millimeterRow(keyOf('millimeters', hole), 'Width of the hole', 50, {
    hint: inchHint(values[keyOf('millimeters', hole)]),
  }),
  {
    kind: 'number',
    key: keyOf('degrees', hole),
    label: 'Angle from straight through',
    unit: '°',
    low: 0,
    high: 90,
    step: 5,
  },
  {
    kind: 'choice',
    key: keyOf('overlap', hole),
    label: 'Earlier repair under it',
    options: [
      { value: 'no', label: 'None, or well apart' },
      { value: 'yes', label: 'Overlaps an earlier repair' },
    ],
  },
  ...(hole === 1
    ? []
    : [
        millimeterRow(keyOf('apart', hole), 'Distance to the nearest other hole', 999, {}),
        {
          kind: 'choice',
          key: keyOf('units', hole),
          label: 'Lay both repair units on the tire',
          options: [
            { value: 'no', label: 'They lie apart' },
            { value: 'yes', label: 'They would overlap' },
          ],
        } as const,
      ]),
]

const rowsFrom = (values: RowValues, looked: Looked, hole: number): readonly Row[] => {
  // Whoever saw a puncture from outside has said already that there is one.
  const isThere = looked === 'outside' && hole === 1
  const asked = isThere ? [] : [holeRow(hole)]
  if (!isThere && values[keyOf('hole', hole)] !== 'yes') return asked
  const own = looked === 'outside' ? outsideRows(values, hole) : insideRows(values, hole)
  return [...asked, ...own, ...(hole === mostHoles ? [] : rowsFrom(values, looked, hole + 1))]
}

/** What decides whether the holes of a tire may be repaired, asked only where there are any. */
export const punctureRows = (values: RowValues, looked: Looked = 'inside'): readonly Row[] =>
  rowsFrom(values, looked, 1)

/** The holes that were filled in, one after another; none where the technician saw none. */
export const puncturesOf = (values: RowValues, looked: Looked = 'inside'): PunctureRecord[] => {
  const holes: PunctureRecord[] = []
  for (let hole = 1; hole <= mostHoles; hole += 1) {
    const isThere = (looked === 'outside' && hole === 1) || values[keyOf('hole', hole)] === 'yes'
    if (!isThere) break
    const text = (name: string) => values[keyOf(name, hole)]
    holes.push({
      place: places.find(({ value }) => value === text('place'))?.value ?? null,
      millimeters: numberOf(text('millimeters')),
      degrees: numberOf(text('degrees')),
      overlapsRepair: yesOf(text('overlap')),
      ...(hole === 1 || looked === 'outside'
        ? {}
        : {
            fromOthers: { millimeters: numberOf(text('apart')), unitsOverlap: yesOf(text('units')) },
          }),
    })
  }
  return holes
}

const numberOf = (text: string | null | undefined): number | null => (text ? Number(text) : null)

const yesOf = (text: string | null | undefined): boolean | null => (text ? text === 'yes' : null)

const inchHint = (text: string | null | undefined): string =>
  text
    ? `${(Number(text) / millimetersPerInch).toFixed(2)} in`
    : `At most ${punctureLimits.widestMillimeters} mm (1/4 in) may be repaired.`
