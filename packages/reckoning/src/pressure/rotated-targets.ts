import type { Pressure } from '../quantity.ts'
import type { SpecificationSheet } from '../sheet.ts'
import type { KilopascalsApart } from '../units/measured.ts'
import { kilopascalsOver } from '../units/pressure-difference.ts'
import { inKilopascals } from '../units/pressure-units.ts'
import { printedIn } from '../units/printed-pressure.ts'
import { axleOf, inReadingOrder, type WheelPosition } from '../wheels.ts'

export type RotatedTarget = {
  readonly position: WheelPosition
  readonly cameFrom: WheelPosition
  /** The label's cold figure of the wheel's new place: what it is set to, by the day's temperature. */
  readonly set: Pressure
  /** How much more that is than the label's figure of the place it came from; negative where it is less. */
  readonly change: KilopascalsApart
}

/**
 * What each wheel must be set to again after a rotation: the figure follows the place, not the wheel. With 33 psi in
 * front and 36 at the rear, a wheel that went from front to rear gets 3 psi more. A place whose figure the label does
 * not print is left out. The vehicle maker's label governs.
 *
 * @formula change = label(position) − label(came from)
 * @units psi as the label prints it, and kPa for the change
 * @source front and rear figures by 49 CFR 571.110 S4.3 (from memory); that they follow the place is common practice, no
 * source
 */
export const targetsAfterRotation = (
  placard: Placard | null,
  cameFrom: Readonly<Partial<Record<WheelPosition, WheelPosition>>>,
): RotatedTarget[] =>
  inReadingOrder(Object.keys(cameFrom) as WheelPosition[]).flatMap((position) => {
    const before = cameFrom[position] ?? position
    const set = labelAt(placard, position)
    const had = labelAt(placard, before)
    if (set === null || had === null) return []
    return [
      { position, cameFrom: before, set, change: kilopascalsOver(inKilopascals(set), inKilopascals(had)) },
    ]
  })

type Placard = Exclude<SpecificationSheet['placard'], 'missing'>

const labelAt = (placard: Placard | null, position: WheelPosition): Pressure | null => {
  const printed = placard?.[axleOf(position)] ?? null
  return printed === null ? null : printedIn('psi', printed)
}
