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
 * Gauge pressure that the same air shows at another temperature and altitude, in a tire that keeps its volume.
 * 35 psi set at 68 °F shows 30.5 psi at 20 °F. In speech: about 1 psi each 10 °F at a car's pressures. Gauge pressure
 * alone never goes into the law: without the open air 32 psi would lose a third too little.
 *
 * @formula gas law at constant volume: (P1 + Pa1) / T1 = (P2 + Pa2) / T2; P gauge, Pa open air, T absolute
 * @units kPa gauge, kPa absolute, K to kPa gauge
 * @limits dry air or nitrogen, no leak; a real tire grows by a percent or so, which is left out
 * @source ideal gas law (computed from definition; one worked case read in print)
 */
export const shiftPressure = ({ gauge, from, to, airBefore, airAfter }: Shift): GaugeKilopascals =>
  gaugeKilopascals(((gauge + airBefore) * to) / from - airAfter)
