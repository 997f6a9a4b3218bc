import { freeMoor } from '../../support/free-vehicles.ts'
import type { Wheels } from './bay.ts'

/** A customer and vehicle that come with a sensor that no longer answers. */
export const { customer, plate } = freeMoor

/**
 * The right rear sensor is silent; all tires hold what cold leaves of the label's figure. Read at 27 °F outdoors, 820 ft
 * up: a sensor that refers to the sea reads 0.4 psi under the gauge.
 */
export const wheels: Wheels = {
  LF: { gauge: '31.6', sensor: '31.2', id: '1A2B3C10' },
  RF: { gauge: '31.4', sensor: '31.0', id: '1A2B3C11' },
  RR: { gauge: '31.5', sensor: null, id: '1A2B3C12' },
  LR: { gauge: '31.7', sensor: '31.3', id: '1A2B3C13' },
  SP: { gauge: '58.5' },
}
