import type { Cents } from '../estimate.ts'
import { wearBar } from './tread-limits.ts'

/** What a customer pays for the tire that replaces a failed one under a warranty by wear; `null`: the tire has given its service. */
export type ProRata = {
  readonly wornPercent: number
  readonly customerPaysCents: Cents
  readonly creditCents: Cents
}

/** How old a failed tire is, and for how long its warranty lasts, in years since it was bought. */
export type WarrantyAge = { readonly years: number; readonly most: number }

/**
 * The share of a tire's tread that is worn away, down to the wear bars, and what the customer pays for its replacement by
 * that share. The warranty's own text governs: what it covers, for how long, and on which price.
 *
 * @formula worn = (depth when new − depth now) / (depth when new − 2/32), between 0 and 1; price · worn, rounded half up
 * @units 1/32 in; cents before tax
 * @limits `null` where the tire is at its wear bars, was never deeper, or is older than its warranty lasts; without an age only
 * the depth counts
 * @source a tire wholesaler's chart of the percentage worn (read); a tire maker's warranty: worn out at 2/32 in, replaced at the
 * price of the day for the share that was used (read); for how long it lasts, a person reads in the warranty
 */
export const proRata = (
  new32nds: number,
  now32nds: number,
  priceCents: Cents,
  age: WarrantyAge | null = null,
): ProRata | null => {
  if (new32nds <= wearBar.value || now32nds <= wearBar.value) return null
  if (age !== null && age.years > age.most) return null
  const worn = Math.max(0, (new32nds - now32nds) / (new32nds - wearBar.value))
  const customerPaysCents = Math.round(priceCents * worn)
  return { wornPercent: 100 * worn, customerPaysCents, creditCents: priceCents - customerPaysCents }
}
