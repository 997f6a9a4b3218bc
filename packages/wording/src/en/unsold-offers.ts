import type { UnsoldOffersWording } from '../unsold-offers.ts'

const unpriced =
  (what: string) =>
  (wheels: string): string =>
    `${what}${wheels === '' ? '' : `, ${wheels}`}: not on the estimate. The price list has no price for it, or the specification sheet does not name the part.`

const at = (wheels: string): string => (wheels === '' ? '' : `, ${wheels}`)

export const unsoldOffers: UnsoldOffersWording = {
  sensor: unpriced('Sensor'),
  'set-of-four': unpriced('Sensors in all wheels'),
  'service-kit': unpriced('Valve stem parts'),
  stem: unpriced('Valve stem'),
  tire: unpriced('Tire'),
  'fastener-repair': unpriced('Studs or nuts'),
  reprogram: unpriced('Programming a sensor again'),
  'sensor-clean': (wheels) =>
    `Cleaning a sensor${at(wheels)}: no line of its own. It is done while the tire is open for other work; a sensor that does not follow afterwards is replaced.`,
  relearn: unpriced('Relearn'),
  reset: unpriced('Reset'),
  'leak-find': unpriced('Finding the leak'),
  'pressure-set': unpriced('Setting pressures'),
  'outside-work': (wheels) =>
    `The findings need work that this shop does not do${at(wheels)}. Tell the customer what it is and who does it; it is not on this estimate.`,
}
