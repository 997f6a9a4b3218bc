import { above } from '../pressure/threshold.ts'
import type { Pressure } from '../quantity.ts'
import { inKilograms, type Mass } from '../units/mass-units.ts'
import { type Kilograms, kilograms } from '../units/measured.ts'
import { inKilopascals } from '../units/pressure-units.ts'
import { loadWords } from '../words/load-check.ts'
import type { LoadRefusal, MissingForLoadCheck } from './load-check-codes.ts'
import { isSlower, type SpeedSymbol } from './speed-symbol.ts'

/** One of the two tires that are compared; `null`: not entered. */
export type CheckedTire = {
  /** A passenger tire, as against a light-truck one. */
  readonly passenger: boolean
  readonly loadIndex: number | null
  readonly speed: SpeedSymbol | null
  /** Read by a person in the load table of the tire's maker or its standard's body, for one tire at its pressure. */
  readonly tableLoad: Mass | null
}

export type LoadCheckOf = {
  readonly vehicle: 'car' | 'truck-or-multipurpose'
  /** Whether the vehicle maker's label names the new size and load index; `null`: not checked. */
  readonly newOnLabel: boolean | null
  /** Its table load is that at the label's pressure. */
  readonly original: CheckedTire
  /** Its table load is that at the chosen pressure. */
  readonly fitted: CheckedTire & { readonly sidewallMaximum: Pressure | null }
  readonly chosen: Pressure | null
}

export type LoadCheck =
  /** The label names the tire: its pressure for that size is the one to set. */
  | { readonly outcome: 'label-decides'; readonly says: string }
  | { readonly outcome: 'asks'; readonly missing: readonly MissingForLoadCheck[]; readonly says: string }
  | { readonly outcome: 'refuses'; readonly reasons: readonly LoadRefusal[]; readonly says: string }
  | {
      readonly outcome: 'passes'
      readonly originalCarries: Kilograms
      readonly fittedCarries: Kilograms
      readonly says: string
    }

/**
 * Whether a tire of another size or load index may take the place of the original at a chosen pressure. The figures
 * that decide come from the load table of the tire's maker or its standard's body, and a person enters them: where one
 * is missing, the person must enter it, and no formula replaces it. The vehicle maker's label comes first.
 *
 * @formula passes when chosen ≤ sidewall maximum, speed symbol ≥ and load index ≥ those of the original, and table load
 * of the new tire at the chosen pressure ≥ table load of the original at the label's pressure; on a truck or
 * multipurpose vehicle a passenger tire's table load counts divided by 1.10
 * @units psi, kPa or bar; kg or lb, one tire
 * @limits single tires; it says whether the load is carried, not whether the tire fits the wheel and clears the body
 * @source NHTSA interpretation nht76-1.47 for the 1.10 (read); a lower load index refused: common practice, no source;
 * the table and the label govern: 49 CFR 571.110 (quoted)
 */
export const loadCheck = (of: LoadCheckOf): LoadCheck => {
  if (of.newOnLabel === true) return { outcome: 'label-decides', says: loadWords.labelDecides }
  const reasons = refusals(of)
  if (reasons.length > 0) return { outcome: 'refuses', reasons, says: loadWords.refuses(reasons) }
  const missing = missingFor(of)
  const [originalCarries, fittedCarries] = [
    carriedOn(of.vehicle, of.original),
    carriedOn(of.vehicle, of.fitted),
  ]
  if (missing.length > 0 || originalCarries === null || fittedCarries === null)
    return { outcome: 'asks', missing, says: loadWords.asks(missing) }
  return { outcome: 'passes', originalCarries, fittedCarries, says: loadWords.passes }
}

/**
 * What a tire counts for on a vehicle; `null` where its table load is not entered. On a truck or multipurpose vehicle a
 * passenger tire counts less. The vehicle maker's label governs which tires it may carry.
 *
 * @formula table load / 1.10 for a passenger tire on a truck or multipurpose vehicle, else the table load
 * @units kg or lb to kg
 * @source NHTSA interpretation nht76-1.47 (read)
 */
export const carriedOn = (vehicle: LoadCheckOf['vehicle'], tire: CheckedTire): Kilograms | null => {
  if (tire.tableLoad === null) return null
  const load = inKilograms(tire.tableLoad)
  return vehicle === 'truck-or-multipurpose' && tire.passenger ? kilograms(load / passengerTireDivisor) : load
}

const passengerTireDivisor = 1.1

/** In kg, because 869 kg divided by 1.10 come out as 789.9999999999999. */
const slightest = 1e-9

const refusals = ({ vehicle, original, fitted, chosen }: LoadCheckOf): LoadRefusal[] => {
  const { sidewallMaximum } = fitted
  const [needed, carried] = [carriedOn(vehicle, original), carriedOn(vehicle, fitted)]
  return [
    ...when(
      chosen !== null &&
        sidewallMaximum !== null &&
        above(inKilopascals(chosen), inKilopascals(sidewallMaximum)),
      'over-sidewall-maximum' as const,
    ),
    ...when(
      original.speed !== null && fitted.speed !== null && isSlower(fitted.speed, original.speed),
      'slower-symbol' as const,
    ),
    ...when(
      original.loadIndex !== null && fitted.loadIndex !== null && fitted.loadIndex < original.loadIndex,
      'lower-index' as const,
    ),
    ...when(needed !== null && carried !== null && carried < needed - slightest, 'carries-less' as const),
  ]
}

const missingFor = ({ newOnLabel, original, fitted, chosen }: LoadCheckOf): MissingForLoadCheck[] => [
  ...when(newOnLabel === null, 'newOnLabel' as const),
  ...when(chosen === null, 'chosen' as const),
  ...when(fitted.sidewallMaximum === null, 'sidewallMaximum' as const),
  ...when(original.loadIndex === null, 'originalLoadIndex' as const),
  ...when(fitted.loadIndex === null, 'fittedLoadIndex' as const),
  ...when(original.speed === null, 'originalSpeed' as const),
  ...when(fitted.speed === null, 'fittedSpeed' as const),
  ...when(original.tableLoad === null, 'originalTableLoad' as const),
  ...when(fitted.tableLoad === null, 'fittedTableLoad' as const),
]

const when = <One>(holds: boolean, one: One): One[] => (holds ? [one] : [])
