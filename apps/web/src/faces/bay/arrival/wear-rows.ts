import type { TireRecord } from '@bayledger/ledger/state'
import { type TreadAcross, wearHint, wearsSeen } from '@bayledger/reckoning/tire/wear-hints'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { tirePrints } from '@bayledger/wording/en/tire-prints'
import { treadFaults } from '../../../lib/fault-words.ts'
import { numberFrom } from '../../../ui/number-text.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'

const optional = 'not looked at'
const places = [
  ['treadInner', 'Tread on the inner side'],
  ['treadMiddle', 'Tread in the middle'],
  ['treadOuter', 'Tread on the outer side'],
] as const

/** The tread from one shoulder to the other, and what is felt around the tire. The last reading says what it hints at. */
export const wearRows = (values: RowValues, wheel: WheelPosition): readonly Row[] => [
  ...places.map(
    ([key, label]): Row => ({
      kind: 'number',
      key,
      label,
      unit: '/32 in',
      optional,
      low: 0,
      high: 40,
      limits: { whole: 2, decimals: 1 },
      ...(key === 'treadOuter' ? { hint: hintOf(values, wheel) } : {}),
    }),
  ),
  {
    kind: 'choice',
    key: 'wear',
    label: 'Wear around the tire',
    optional,
    options: [
      { value: 'none', label: 'Even' },
      { value: 'cups', label: 'Dips', detail: 'at intervals' },
      { value: 'feathers', label: 'Sharp edges', detail: 'on one side of the blocks' },
    ],
  },
]

const hintOf = (values: RowValues, wheel: WheelPosition): string => {
  const across = acrossOf(values)
  const hint = across === null ? 'even' : wearHint(across)
  return across === null || hint === 'even'
    ? 'Read at all three, the tread says whether it wears evenly.'
    : tirePrints.wornAcross({ wheel, across, hint })
}

/** The readings across a tread; `null` until all three are there. */
export const acrossOf = (values: RowValues): TreadAcross | null => {
  const [inner, middle, outer] = places.map(([key]) => numberFrom(values[key] ?? ''))
  return inner == null || middle == null || outer == null ? null : { inner, middle, outer }
}

/** Two readings say nothing of a pattern. */
export const acrossFault = (values: RowValues): string | undefined =>
  acrossOf(values) === null && places.some(([key]) => values[key]) ? treadFaults.notAllThree : undefined

/** What was read of the wear, as the ledger takes it; nothing is absent that was typed. */
export const wearOf = (values: RowValues): Pick<TireRecord, 'treadAcross' | 'wearSeen'> => {
  const treadAcross = acrossOf(values)
  const wearSeen = wearsSeen.find((seen) => seen === values.wear)
  return { ...(treadAcross ? { treadAcross } : {}), ...(wearSeen ? { wearSeen } : {}) }
}
