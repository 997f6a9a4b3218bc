import { type SetTarget, setTarget } from '@bayledger/reckoning/pressure/set-target'
import type { Surroundings } from '@bayledger/reckoning/sheet'
import { inFahrenheit } from '@bayledger/reckoning/units/temperature-units'
import { axleOf, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState } from './order-state.ts'

/**
 * The pressure to set a wheel to now, in psi: the label's figure carried from the outdoor temperature to the
 * tire's own. `null` where the sheet has no figure for the position. The maker's label governs.
 */
export const pressureTargetFor = (
  state: OrderState,
  wheel: WheelPosition,
  surroundings: Surroundings,
): SetTarget | null => {
  const sheet = state.sheet?.sheet
  const axle = axleOf(wheel)
  const placard = sheet?.placard[axle]
  const tire = sheet?.tire[axle]
  if (!sheet || !placard) return null
  return setTarget({
    placardPsi: placard.psi,
    sidewallMaximumPsi: tire?.sidewallMaximumPsi ?? null,
    outdoorFahrenheit: inFahrenheit(surroundings.outdoor),
    tireFahrenheit: surroundings.tire ? inFahrenheit(surroundings.tire) : null,
    tires: surroundings.tires,
    altitudeFeet: surroundings.altitudeFeet,
  })
}
