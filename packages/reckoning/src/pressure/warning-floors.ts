import type { LoadClass } from '../sheet.ts'
import { type GaugeKilopascals, gaugeKilopascals } from '../units/measured.ts'
import { inKilopascals } from '../units/pressure-units.ts'

/** Under which a telltale must light whatever the label says, as a rule prints it in both units. */
export type WarningFloor = {
  readonly psi: number
  readonly kPa: number
  readonly source: string
  readonly doubt: string
}

const table1 = (psi: number, kPa: number, doubt: string): WarningFloor => ({
  psi,
  kPa,
  source: '49 CFR 571.138, Table 1, minimum activation pressure',
  doubt,
})

const fromMemory = 'from memory; the table itself was not read'

/** By the tire's class. Both columns are rounded, so each unit goes by its own. */
export const warningFloors: Readonly<Record<LoadClass, WarningFloor>> = {
  SL: table1(20, 140, fromMemory),
  XL: table1(23, 160, fromMemory),
  'LT-C': table1(29, 200, fromMemory),
  'LT-D': table1(38, 260, fromMemory),
  'LT-E': table1(46, 320, `${fromMemory}, and this row is the least sure`),
}

/**
 * The floor of a tire's class in kPa, out of the column of the label's own unit.
 *
 * @units psi or kPa column to kPa gauge
 * @limits SL, XL and light-truck load ranges C, D and E
 * @source 49 CFR 571.138, Table 1 (from memory, least sure for load range E)
 */
export const warningFloor = (loadClass: LoadClass, column: 'psi' | 'kPa'): GaugeKilopascals =>
  column === 'psi'
    ? inKilopascals({ value: warningFloors[loadClass].psi, unit: 'psi' })
    : gaugeKilopascals(warningFloors[loadClass].kPa)
