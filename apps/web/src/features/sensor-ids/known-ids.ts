import type { OrderState } from '@bayledger/ledger/order-state'
import { readingOrder, type WheelPosition, wheelNames } from '@bayledger/reckoning/wheels'
import { type KnownId, lastFour, withoutRepeats } from './id-text.ts'

/** IDs that this order knows, those of the wheel first: what to offer before anyone types. */
export const knownIds = (state: OrderState, wheel: WheelPosition): KnownId[] => {
  const others = readingOrder.filter((position) => position !== wheel)
  return withoutRepeats([
    ...idsAt(state, wheel),
    ...others.flatMap((position) =>
      idsAt(state, position).map(({ id, says }) => ({ id, says: `${wheelNames[position]}, ${says}` })),
    ),
  ])
}

/** "same as stored · 3C12" */
export const knownIdWords = ({ id, says }: KnownId): string => `${says} · ${lastFour(id)}`

const idsAt = (state: OrderState, wheel: WheelPosition): KnownId[] => {
  const work = state.work[wheel]
  const heard = state.arrival.wheels[wheel]?.sensor?.reading
  const stored = state.arrival.module?.ids[wheel]
  const storedNow = state.closing.module?.ids[wheel]
  return [
    ...(work?.programmed ? [{ id: work.programmed.sensorId, says: 'as programmed' }] : []),
    ...(storedNow ? [{ id: storedNow, says: 'same as stored now' }] : []),
    ...(stored ? [{ id: stored, says: 'same as stored' }] : []),
    ...(heard?.answer === 'answered' && heard.id ? [{ id: heard.id, says: 'as heard on arrival' }] : []),
  ]
}
