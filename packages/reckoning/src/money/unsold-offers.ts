import type { Finding, Offer } from '../diagnosis/diagnosis.ts'
import type { Bundle, Work } from '../estimate.ts'
import { inReadingOrder, type WheelPosition } from '../wheels.ts'

/** The works that take up an offer of the findings; none where this shop sells nothing for it. */
export const takenUpBy: Readonly<Record<Offer, readonly Work['kind'][]>> = {
  sensor: ['fit-sensor'],
  'set-of-four': ['fit-sensor'],
  'service-kit': ['service-stem', 'fit-sensor'],
  stem: ['service-stem', 'fit-sensor'],
  tire: ['fit-tire'],
  'fastener-repair': ['repair-fastener'],
  reprogram: ['relearn'],
  'sensor-clean': [],
  relearn: ['relearn'],
  reset: ['reset'],
  // A tire that is replaced leaks no more.
  'leak-find': ['find-leak', 'repair-puncture', 'fit-tire'],
  'pressure-set': ['set-pressures'],
  'outside-work': [],
}

/** An offer of the findings that no bundle takes up, at these wheels; none where it concerns the vehicle. */
export type UnsoldOffer = { readonly offer: Offer; readonly wheels: readonly WheelPosition[] }

/**
 * What the findings offer and these bundles do not hold, so that the desk can say why not: work done elsewhere, or what
 * the price list or the sheet does not know.
 *
 * @source This program's own rule.
 */
export const unsoldOffers = (
  findings: readonly Finding[],
  bundles: readonly Pick<Bundle, 'works'>[],
): UnsoldOffer[] => {
  const works = bundles.flatMap((bundle) => bundle.works)
  const unsold = new Map<Offer, WheelPosition[]>()
  for (const { offers, wheels } of findings)
    for (const offer of offers) {
      const serving = works.filter(({ kind }) => takenUpBy[offer].includes(kind))
      const left = wheels.filter(
        (wheel) => !serving.some((work) => !('wheel' in work) || work.wheel === wheel),
      )
      if (wheels.length === 0 ? serving.length === 0 : left.length > 0)
        unsold.set(offer, [...(unsold.get(offer) ?? []), ...left])
    }
  return [...unsold].map(([offer, wheels]) => ({ offer, wheels: inReadingOrder(wheels) }))
}
