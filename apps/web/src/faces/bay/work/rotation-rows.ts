import type { TiresSeen } from '@bayledger/ledger/subjects/work/tires-seen'
import { readTireSize } from '@bayledger/reckoning/tire/read-tire-size'
import { tireSizeText } from '@bayledger/reckoning/tire/tire-size'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { capitalized } from '@bayledger/wording/capitalized'
import { wheelNames, wheels } from '@bayledger/wording/en/wheels'
import { wheelList } from '@bayledger/wording/wheels'
import { readAgain } from '../../../lib/fault-words.ts'
import { noneOfThem, type RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'

/** `moved`: the places whose wheels are to move; `unread`: those of them whose size nobody has recorded. */
export type TiresAsked = {
  readonly moved: readonly WheelPosition[]
  readonly unread: readonly WheelPosition[]
  /** What the sheet names; `null` where it names no tire. */
  readonly bySheet: string | null
}

/** Two presses where no tire has an arrow and all are of the sheet's size; one where their sizes are on record. */
export const rotationRows = (values: RowValues, { moved, unread, bySheet }: TiresAsked): readonly Row[] => [
  {
    kind: 'choice',
    key: 'arrow',
    label: 'Arrow on the sidewall: rolls one way only',
    options: [
      { value: 'none', label: 'No tire has one' },
      { value: 'all', label: 'Every tire has one' },
      { value: 'some', label: 'Some have one' },
    ],
  },
  ...(values.arrow === 'some'
    ? [
        {
          kind: 'several',
          key: 'arrows',
          label: 'Tires with an arrow',
          noneWord: 'no tire',
          options: moved.map((wheel) => ({ value: wheel, label: capitalized(wheelNames[wheel]) })),
        } as const,
      ]
    : []),
  ...(unread.length === 0
    ? []
    : [
        {
          kind: 'choice',
          key: 'sizes',
          label: `Size and load index, ${wheelList(wheels, unread)}`,
          options: [
            { value: 'as-sheet', label: 'As the sheet', ...(bySheet === null ? {} : { detail: bySheet }) },
            { value: 'other', label: 'Not all', detail: 'type what the tire says' },
          ],
        } as const,
      ]),
  ...(values.sizes === 'other' ? unread.map((wheel) => sizeRow(values, wheel, unread)) : []),
]

const sizeKey = (wheel: WheelPosition): string => `size.${wheel}`

const sizeRow = (values: RowValues, wheel: WheelPosition, unread: readonly WheelPosition[]): Row => ({
  kind: 'text',
  key: sizeKey(wheel),
  label: `Size on the ${wheelNames[wheel]} tire`,
  optional: 'as the sheet',
  exact: true,
  hint: 'With load index and speed symbol, as 215/60R16 95H.',
  suggestions: [
    ...new Set(unread.flatMap((other) => (other === wheel ? [] : (sizeText(values[sizeKey(other)]) ?? [])))),
  ].map((size) => ({ value: size, label: size })),
  fault: (text) => {
    const read = readTireSize(text)
    return read.ok ? undefined : readAgain(read)
  },
})

const sizeText = (typed: string | null | undefined): string | null => {
  const read = readTireSize(typed ?? '')
  return read.ok ? tireSizeText(read.value) : null
}

/** What was filled in, as the ledger takes it; `null` while something is not answered. */
export const tiresSeenOf = (values: RowValues, { moved, unread }: TiresAsked): TiresSeen | null => {
  const arrows = arrowsOf(values, moved)
  if (arrows === null || (unread.length > 0 && !values.sizes)) return null
  const isTyped = values.sizes === 'other'
  return {
    arrows,
    sizes: Object.fromEntries(
      unread.flatMap((wheel) => {
        const size = isTyped ? sizeText(values[sizeKey(wheel)]) : null
        return size === null ? [] : [[wheel, size]]
      }),
    ),
  }
}

const arrowsOf = (values: RowValues, moved: readonly WheelPosition[]): WheelPosition[] | null => {
  if (values.arrow === 'none') return []
  if (values.arrow === 'all') return [...moved]
  if (values.arrow !== 'some' || !values.arrows) return null
  return values.arrows === noneOfThem
    ? []
    : moved.filter((wheel) => values.arrows?.split(',').includes(wheel))
}
