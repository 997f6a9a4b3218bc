import type { OrderState, VehicleCheck } from '@bayledger/ledger/state'
import { idKey, idText } from '@bayledger/reckoning/sensor/sensor-id'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { wheelNames } from '@bayledger/wording/en/wheels'
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

/**
 * The IDs that are to be expected at a wheel, the likeliest first: the one that was programmed for it, else those of the
 * sensor that came with the wheel that is there now.
 */
export const expectedIds = (state: OrderState, wheel: WheelPosition): KnownId[] => {
  const cameFrom = placeBefore(state, wheel)
  const programmed = state.work[cameFrom]?.programmed
  return programmed
    ? [{ id: programmed.sensorId, says: 'as programmed' }]
    : withoutRepeats(oldIds(state, cameFrom))
}

/** From where the wheel came that is at a place now. One that became the spare was stowed, by a step of the plan. */
const placeBefore = (state: OrderState, wheel: WheelPosition): WheelPosition => {
  const mounted = state.work[wheel]?.mounted
  if (mounted) return mounted.cameFrom
  const stowed = state.plan?.plan.steps.find(
    (step) => step.code === 'stow-spare' && step.wheel === wheel && state.closed[step.stepKey],
  )
  return stowed?.comesFrom ?? wheel
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

/** IDs that other wheels of this vehicle came with or were given since. */
export const idsElsewhere = (
  state: OrderState,
  wheel: WheelPosition,
): readonly { readonly wheel: WheelPosition; readonly id: string }[] =>
  readingOrder
    .filter((position) => position !== wheel)
    .flatMap((position) => {
      const { fitted, programmed } = state.work[position] ?? {}
      const given = fitted ?? programmed
      return [...(given ? [{ id: given.sensorId }] : []), ...oldIds(state, position)].map(({ id }) => ({
        wheel: position,
        id,
      }))
    })

/** What the vehicle holds for a wheel: a decimal ID as its number in hexadecimal, as the sensor itself is read. */
const storedIn = (module: VehicleCheck['module'], wheel: WheelPosition): string | null => {
  const stored = module?.ids[wheel]
  if (stored === undefined || module?.notation !== 'decimal') return stored ?? null
  return /^\d+$/.test(stored) ? idText(idKey(stored, 'decimal'), 'hex') : null
}
