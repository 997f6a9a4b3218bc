export type Shift = {
  /** Gauge pressure in kPa before. */
  readonly gauge: number
  /** Air temperature inside the tire in kelvin, before and after. */
  readonly from: number
  readonly to: number
  /** Pressure of the open air in kPa, before and after. */
  readonly airBefore: number
  readonly airAfter: number
}

/**
 * Gauge pressure in kPa that the same air shows at another temperature and altitude, in a tire that keeps its
 * volume: gas law, (P1 + Pa1) / T1 = (P2 + Pa2) / T2. 35 psi set at 68 °F shows 30.5 psi at 20 °F.
 */
export const shiftPressure = ({ gauge, from, to, airBefore, airAfter }: Shift): number =>
  ((gauge + airBefore) * to) / from - airAfter
