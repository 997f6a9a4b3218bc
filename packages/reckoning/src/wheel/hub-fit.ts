import type { Millimeters } from '../units/measured.ts'

/** How a wheel's bore goes over a hub; `apart`: how much wider the bore is than the hub. */
export type HubFit = {
  readonly outcome: 'centers' | 'does-not-go-on' | 'needs-ring'
  readonly apart: Millimeters
}

/** Callipers in a shop read to a tenth of a millimeter. */
const readTo = 0.1 + 1e-9

/**
 * Whether a wheel's center bore goes over the hub and is centered by it. A wider bore needs a centering ring of the two
 * diameters, so that the nuts do not have to center the wheel.
 *
 * @formula bore − hub: within 0.1 mm the hub centers the wheel; under that it does not go on; over it a ring is needed
 * @units mm
 * @limits a wheel that is made to be centered by its nuts alone needs no ring; the vehicle maker's and the wheel maker's pages
 * govern
 * @source common practice, no source; 0.1 mm: this program's own rule
 */
export const hubFit = (hub: Millimeters, bore: Millimeters): HubFit => {
  const apart = (bore - hub) as Millimeters
  if (apart < -readTo) return { outcome: 'does-not-go-on', apart }
  return { outcome: apart > readTo ? 'needs-ring' : 'centers', apart }
}
