import type { OrderState } from '@bayledger/ledger/state'
import type { Surroundings } from '@bayledger/reckoning/sheet'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { numberFrom } from '../../../ui/number-text.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import { fahrenheitOf, tiresOptions } from '../arrival/temperatures.ts'
import type { Row } from '../form/rows.ts'

/** Temperatures that were noted, with when and where. */
export type NotedSurroundings = {
  readonly surroundings: Surroundings
  /** The wheel at which they were noted; `null`: on arrival. */
  readonly at: WheelPosition | null
  readonly writtenAt: string
}

/** As the last tire was set, else as noted on arrival; `null` where neither is on record. */
export const latestSurroundings = (state: OrderState): NotedSurroundings | null => {
  const set = Object.entries(state.work)
    .flatMap(([wheel, work]) =>
      work.pressure ? [{ wheel: wheel as WheelPosition, pressure: work.pressure }] : [],
    )
    .sort((one, other) => other.pressure.written.seq - one.pressure.written.seq)[0]
  const noted = state.surroundings
  if (set && set.pressure.written.seq > (noted?.written.seq ?? 0))
    return {
      surroundings: set.pressure.surroundings,
      at: set.wheel,
      writtenAt: set.pressure.written.writtenAt,
    }
  return noted ? { surroundings: noted.surroundings, at: null, writtenAt: noted.written.writtenAt } : null
}

/** A tire that came in follows the bay within an hour or two; after this it is read again (common practice, no source). */
const stillGoodMilliseconds = 30 * 60_000

const temperature = { kind: 'number', unit: '°F', signed: true, limits: { whole: 3, decimals: 1 } } as const

/** Nothing is filled in for anyone: the temperatures are read, or one press says that they are still the same. */
export const pressureRows = (
  values: RowValues,
  before: NotedSurroundings,
  now: number = Date.now(),
): readonly Row[] => {
  const isFresh = now - Date.parse(before.writtenAt) <= stillGoodMilliseconds
  const asLeft: Row = {
    kind: 'number',
    key: 'asLeft',
    label: 'As left',
    unit: 'psi',
    low: 0,
    high: 150,
    step: 0.5,
  }
  const basis: Row = {
    kind: 'choice',
    key: 'basis',
    label: 'Temperatures',
    options: [
      {
        value: 'same',
        label: before.at === null ? 'Still as on arrival' : `Same as ${before.at}`,
        detail: surroundingsWords(before.surroundings),
      },
      { value: 'anew', label: 'Read again' },
    ],
  }
  if (isFresh && values.basis !== 'anew') return values.basis === 'same' ? [basis, asLeft] : [basis]
  return [
    ...(isFresh ? [basis] : []),
    { kind: 'choice', key: 'tires', label: 'The tires are', options: tiresOptions },
    ...(values.tires === 'cold'
      ? []
      : [
          {
            ...temperature,
            key: 'tire',
            label: 'Air in the tire',
            low: -60,
            high: 250,
            optional: 'not read',
            asked: true,
          } as const,
        ]),
    { ...temperature, key: 'outdoor', label: 'Outdoors', low: -60, high: 130 },
    asLeft,
  ]
}

/** The temperatures that the target follows from; `null` while they are not all said. */
export const surroundingsOf = (values: RowValues, before: Surroundings): Surroundings | null => {
  if (values.basis === 'same') return before
  const tires = tiresOptions.find(({ value }) => value === values.tires)?.value
  const outdoor = numberFrom(values.outdoor ?? '')
  if (tires === undefined || outdoor === null) return null
  const tire = tires === 'cold' ? null : numberFrom(values.tire ?? '')
  return {
    ...before,
    outdoor: { value: outdoor, unit: 'F' },
    tires,
    tire: tire === null ? null : { value: tire, unit: 'F' },
  }
}

const surroundingsWords = ({ tires, tire, outdoor }: Surroundings): string =>
  [
    tiresOptions.find(({ value }) => value === tires)?.label.toLowerCase(),
    ...(tire ? [`air ${fahrenheitOf(tire)} °F`] : []),
    `outdoors ${fahrenheitOf(outdoor)} °F`,
  ].join(' · ')
