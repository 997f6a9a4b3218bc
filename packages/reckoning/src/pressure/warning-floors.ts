import type { LoadClass } from '../sheet.ts'
import { type GaugeKilopascals, gaugeKilopascals } from '../units/measured.ts'
import { inKilopascals } from '../units/pressure-units.ts'

/** Under which a telltale must light whatever the label says, as a rule prints it in both units. */
export type WarningFloor = {
  readonly psi: number
  readonly kPa: number
  readonly source: string
  /** Whether the row is as the table was remembered, the table itself unread, or the one that is least sure. */
  readonly doubt: 'from-memory' | 'least-sure'
}

const table1 = (psi: number, kPa: number, doubt: WarningFloor['doubt']): WarningFloor => ({
  psi,
  kPa,
  source: '49 CFR 571.138, Table 1',
  doubt,
})

/** The classes that the table has a row for, as far as it is remembered: none for HL, load range F and commercial C tires. */
type FlooredClass = Exclude<LoadClass, 'HL' | 'LT-F' | 'C'>

/** By the tire's class. Both columns are rounded, so each unit goes by its own. */
export const warningFloors: Readonly<Record<FlooredClass, WarningFloor>> = {
  SL: table1(20, 140, 'from-memory'),
  XL: table1(23, 160, 'from-memory'),
  'LT-C': table1(29, 200, 'from-memory'),
  'LT-D': table1(38, 260, 'from-memory'),
  'LT-E': table1(46, 320, 'least-sure'),
}

/**
 * The floor of a tire's class in kPa, out of the column of the label's own unit; 0 for a class without a row, where
 * the label's share alone counts.
 *
 * @units psi or kPa column to kPa gauge
 * @limits rows for SL, XL and light-truck load ranges C, D and E
 * @source 49 CFR 571.138, Table 1 (from memory, least sure for load range E)
 */
export const warningFloor = (loadClass: LoadClass, column: 'psi' | 'kPa'): GaugeKilopascals => {
  const floors: Readonly<Partial<Record<LoadClass, WarningFloor>>> = warningFloors
  const floor = floors[loadClass]
  if (floor === undefined) return gaugeKilopascals(0)
  return column === 'psi' ? inKilopascals({ value: floor.psi, unit: 'psi' }) : gaugeKilopascals(floor.kPa)
}
