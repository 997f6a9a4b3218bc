import {
  type AbsoluteKilopascals,
  type GaugeKilopascals,
  type Kelvin,
  type KilopascalsApart,
  kelvins,
} from '../units/measured.ts'
import { kilopascalsOver } from '../units/pressure-difference.ts'

/**
 * How much a tire may still lose before the telltale lights; zero or less where it is lit by right.
 *
 * @formula cold − warn
 * @units kPa gauge, of the cold tire, to kPa
 * @source definition of a margin (computed from definition)
 */
export const marginOverWarning = (cold: GaugeKilopascals, warn: GaugeKilopascals): KilopascalsApart =>
  kilopascalsOver(cold, warn)

/**
 * The temperature at which cold alone lights the telltale of a tire that leaks nothing. 35 psi set at 70 °F with a
 * warning point of 26.25 psi at the sea: -23 °F.
 *
 * @formula Tw = T1 · (warn + Pa) / (P1 + Pa)
 * @units kPa gauge, kPa absolute, K to K
 * @limits no seepage: a tire that lost 3 psi over the months lights some 28 °F earlier
 * @source ideal gas law (computed from definition)
 */
export const temperatureThatWarns = (of: {
  readonly gauge: GaugeKilopascals
  readonly at: Kelvin
  readonly warn: GaugeKilopascals
  readonly air: AbsoluteKilopascals
}): Kelvin => kelvins((of.at * (of.warn + of.air)) / (of.gauge + of.air))
