import type { Pressure, PrintedPressure } from '../quantity.ts'
import { pressureIn } from './pressure-units.ts'

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

/**
 * A label's pressure as it was typed, in the unit that the label prints. Only where it prints no psi is the psi figure
 * computed, to a tenth; what was typed is kept beside it. 2.3 bar is 33.4 psi.
 *
 * @formula psi as typed; otherwise kPa / 6.894757293168, with 100 kPa for a bar
 * @units psi, kPa or bar to psi, gauge to gauge
 * @source as for `inKilopascals` (computed from definition)
 */
export const printedFrom = ({ value, unit }: Pressure): PrintedPressure =>
  unit === 'psi'
    ? { psi: value, kPa: null }
    : {
        psi: Math.round(pressureIn('psi', { value, unit }) * 10) / 10,
        kPa: unit === 'kPa' ? value : null,
        typed: { value, unit },
      }

/**
 * Whether a label's psi figure is what the label's own unit comes to, where it prints no psi.
 *
 * @source as for `printedFrom`
 */
export const isAsTyped = ({ psi, typed }: PrintedPressure): boolean =>
  typed === undefined || printedFrom(typed).psi === psi
