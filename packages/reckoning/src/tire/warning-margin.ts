/** How far a tire can lose pressure before the vehicle warns of it. */
export type WarningMargin = {
  readonly percent: number
  /** The rule for the vehicle's own label lets it lose a quarter. */
  readonly isMoreThanAQuarter: boolean
}

/**
 * How much of its pressure a tire loses before the vehicle's light comes on, where it is set to another pressure than the
 * label's: the vehicle goes on warning at the trigger of its own label. A tire at 41 psi on a vehicle that warns at 24 psi has
 * lost 41.5 % by then.
 *
 * @formula 100 · (1 − trigger / pressure)
 * @units psi, both cold; %
 * @limits not for vehicles without sensors: those compare the tires with one another and with how they rolled at the last reset
 * @source a quarter below the vehicle maker's cold pressure: 49 CFR 571.138 S4.2(a) (read)
 */
export const warningMargin = (psi: number, warnsAtPsi: number): WarningMargin => {
  const percent = 100 * (1 - warnsAtPsi / psi)
  return { percent, isMoreThanAQuarter: percent > 25 + 1e-9 }
}
