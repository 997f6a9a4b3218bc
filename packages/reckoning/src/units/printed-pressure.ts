import type { Pressure, PrintedPressure } from '../quantity.ts'

/**
 * The figure that a label prints in a unit; `null` where it prints none in it. A label that reads 35 psi and 240 kPa
 * holds two figures, each rounded by its maker: neither is ever computed from the other, for 240 kPa is 34.8 psi. The
 * vehicle maker's label governs what a tire is set to.
 *
 * @units psi or kPa, gauge, as printed
 * @source 49 CFR 571.110 S4.3 requires the label; that both its figures count is this program's own rule
 */
export const printedIn = (unit: 'psi' | 'kPa', printed: PrintedPressure): Pressure | null => {
  const value = printed[unit]
  return value === null ? null : { value, unit }
}
