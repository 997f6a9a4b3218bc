import type { LoadClass } from '../sheet.ts'
import { type GaugeKilopascals, gaugeKilopascals } from '../units/measured.ts'
import { warningFloor } from './warning-floors.ts'

export type WarningPointOf = {
  /** The axle's label figure. */
  readonly placard: GaugeKilopascals
  /** The trigger that the vehicle maker publishes; null where none is known. */
  readonly makersTrigger: GaugeKilopascals | null
  /** Null where it is not known: then only the label's share counts. */
  readonly loadClass: LoadClass | null
  /** The column of the floor table: the label's own unit, since both columns are rounded. */
  readonly column: 'psi' | 'kPa'
}

/**
 * Pressure at or under which the telltale lights: the vehicle maker's own trigger, which governs where it is
 * published; else the higher of 75 % of the label's figure and the floor of the tire's class. 35 psi: 26.25 psi.
 * A dark telltale does not mean that the pressure is right.
 *
 * @formula max(0.75 · placard, floor)
 * @units kPa gauge
 * @limits vehicles to 4,536 kg (10,000 lb) without dual wheels; other rules, as UN R141, count from the warm tire
 * @source 49 CFR 571.138 S4.2(a), "equal to or less than" (read); the floors are from memory
 */
export const warningPoint = ({
  placard,
  makersTrigger,
  loadClass,
  column,
}: WarningPointOf): GaugeKilopascals =>
  makersTrigger ??
  gaugeKilopascals(Math.max(0.75 * placard, loadClass === null ? 0 : warningFloor(loadClass, column)))
