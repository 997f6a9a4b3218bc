import type { OrderState, VehicleCheck } from '@bayledger/ledger/state'
import { idKey, idText } from '@bayledger/reckoning/sensor/sensor-id'
import { readingOrder, type WheelPosition, wheelNames } from '@bayledger/reckoning/wheels'
import { type KnownId, lastFour, withoutRepeats } from './id-text.ts'

/** IDs that this order knows, hexadecimal, those of the wheel first: what to offer before anyone types. */
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
  const storedNow = storedIn(state.closing.module, wheel)
  return [
    ...(work?.programmed ? [{ id: work.programmed.sensorId, says: 'as programmed' }] : []),
    ...(storedNow ? [{ id: storedNow, says: 'same as stored now' }] : []),
    ...oldIds(state, wheel),
  ]
}

/** The ID of the sensor that a wheel came with: stored in the vehicle, or heard. */
export const oldIds = (state: OrderState, wheel: WheelPosition): KnownId[] => {
  const heard = state.arrival.wheels[wheel]?.sensor?.reading
  const stored = storedIn(state.arrival.module, wheel)
  return [
    ...(stored ? [{ id: stored, says: 'same as stored' }] : []),
    ...(heard?.answer === 'answered' && heard.id ? [{ id: heard.id, says: 'as heard on arrival' }] : []),
  ]
}

/** What the vehicle holds for a wheel: a decimal ID as its number in hexadecimal, as the sensor itself is read. */
const storedIn = (module: VehicleCheck['module'], wheel: WheelPosition): string | null => {
  const stored = module?.ids[wheel]
  if (stored === undefined || module?.notation !== 'decimal') return stored ?? null
  return /^\d+$/.test(stored) ? idText(idKey(stored, 'decimal'), 'hex') : null
}
