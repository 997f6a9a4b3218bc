import { inReadingOrder, readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../state.ts'
import { isSettledByWork } from './finding-holds.ts'

/** What everyone at the shop must know about a tire before they touch it. */
export type Care = {
  readonly danger: 'sealant' | 'run-low'
  /** None where nobody knows which wheel it is. */
  readonly wheels: readonly WheelPosition[]
}

/**
 * Tires with sealant in them and tires that were driven low: as the customer said at the desk, as they were seen on
 * arrival, and as the findings have them, until work has settled it.
 */
export const handleWithCare = (state: OrderState): readonly Care[] => [
  ...careOf(state, 'sealant', 'sealant-inside', ({ sealantSeen }) => sealantSeen === true),
  ...careOf(state, 'run-low', 'run-low-damage-possible', ({ tireDamage }) =>
    (tireDamage ?? []).includes('run-low-dust'),
  ),
]

type TireSeen = NonNullable<OrderState['arrival']['tires']['LF']>

const events = { sealant: 'sealant', 'run-low': 'driven-low' } as const

const careOf = (
  state: OrderState,
  danger: Care['danger'],
  code: 'sealant-inside' | 'run-low-damage-possible',
  isSeen: (tire: TireSeen) => boolean,
): Care[] => {
  const finding = state.diagnosis?.diagnosis.findings.find((one) => one.code === code)
  if (finding && isSettledByWork(state, finding)) return []
  const told = (state.complaint?.events ?? []).filter(
    ({ kind, happened }) => kind === events[danger] && happened === true,
  )
  const wheels = inReadingOrder([
    ...(finding?.wheels ?? []),
    ...told.flatMap(({ wheel }) => (wheel ? [wheel] : [])),
    ...readingOrder.filter((wheel) => {
      const tire = state.arrival.tires[wheel]
      return tire !== undefined && isSeen(tire)
    }),
  ])
  return finding || told.length > 0 || wheels.length > 0 ? [{ danger, wheels }] : []
}
