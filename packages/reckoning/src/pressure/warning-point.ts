import type { LoadClass } from '../sheet.ts'
import { kilopascalsPerPsi } from '../units/exact-factors.ts'
import { type GaugeKilopascals, gaugeKilopascals } from '../units/measured.ts'

export type WarningPointOf = {
  /** The axle's placard figure. */
  readonly placard: GaugeKilopascals
  /** Null where it is not known: then only the placard's share counts. */
  readonly loadClass: LoadClass | null
  /** The column of the floor table: the placard's own unit, since both columns are rounded. */
  readonly column: 'psi' | 'kPa'
}

/**
 * Pressure in kPa at or under which the telltale must light: the higher of 75 % of the placard and the floor of
 * the tire's class. 49 CFR 571.138 S4.2(a); the floors of its Table 1 are from memory.
 */
export const warningPoint = ({ placard, loadClass, column }: WarningPointOf): GaugeKilopascals =>
  gaugeKilopascals(Math.max(0.75 * placard, loadClass === null ? 0 : floors[loadClass][column]))

const floor = (psi: number, kPa: number) => ({ psi: psi * kilopascalsPerPsi, kPa })

const floors: Readonly<Record<LoadClass, { psi: number; kPa: number }>> = {
  SL: floor(20, 140),
  XL: floor(23, 160),
  'LT-C': floor(29, 200),
  'LT-D': floor(38, 260),
  'LT-E': floor(46, 320),
}
