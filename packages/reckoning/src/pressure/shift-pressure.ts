import {
  type AbsoluteKilopascals,
  type GaugeKilopascals,
  gaugeKilopascals,
  type Kelvin,
} from '../units/measured.ts'

export type Shift = {
  /** Before. */
  readonly gauge: GaugeKilopascals
  /** Of the air inside the tire, before and after. */
  readonly from: Kelvin
  readonly to: Kelvin
  /** Of the open air, before and after. */
  readonly airBefore: AbsoluteKilopascals
  readonly airAfter: AbsoluteKilopascals
}

/**
 * Gauge pressure in kPa that the same air shows at another temperature and altitude, in a tire that keeps its
 * volume: gas law, (P1 + Pa1) / T1 = (P2 + Pa2) / T2. 35 psi set at 68 °F shows 30.5 psi at 20 °F.
 */
export const shiftPressure = ({ gauge, from, to, airBefore, airAfter }: Shift): GaugeKilopascals =>
  gaugeKilopascals(((gauge + airBefore) * to) / from - airAfter)
