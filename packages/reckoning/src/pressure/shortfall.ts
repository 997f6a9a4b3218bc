import type { KilopascalsApart } from '../units/measured.ts'
import { kilopascalsOver } from '../units/pressure-difference.ts'
import type { GaugedTire } from './air-loss.ts'
import { lostToAltitude } from './altitude-change.ts'
import { shiftPressure } from './shift-pressure.ts'

/** What a gauge shows less than when the tire was set, and of that what each cause took. A negative part raised it. */
export type Shortfall = {
  readonly total: KilopascalsApart
  readonly byTemperature: KilopascalsApart
  readonly byAltitude: KilopascalsApart
  /** Air that is no longer in the tire; negative where air was added. */
  readonly byLostAir: KilopascalsApart
}

/**
 * How much of what a tire lacks is colder air, how much denser air outside, and how much is air that got out. Set to
 * 33.0 psi at 68 °F, 26.9 at 32 °F and the same altitude: 6.1 psi less, of which 3.3 by the cold and 2.8 lost.
 *
 * @formula byTemperature = P0 − ((P0 + Pa0) · T / T0 − Pa0); byAltitude = Pa − Pa0; byLostAir = (P0 + Pa0) · T / T0 − Pa − P;
 * their sum is P0 − P. P gauge, Pa open air, T absolute; 0: when it was set
 * @units kPa gauge, kPa absolute, K to kPa
 * @limits takes the tire to have been set to P0 and to keep its volume; whether the loss is more than the readings can be
 * off by is for `lossUncertainty`
 * @source ideal gas law at constant volume (computed from definition); a university's worked question on a flat tire and
 * a textbook's on air let out of a warm one (read)
 */
export const shortfallSince = (set: GaugedTire, now: GaugedTire): Shortfall => {
  const kept = (airAfter: GaugedTire['air']) =>
    shiftPressure({
      gauge: set.gauge,
      from: set.temperature,
      to: now.temperature,
      airBefore: set.air,
      airAfter,
    })
  return {
    total: kilopascalsOver(set.gauge, now.gauge),
    byTemperature: kilopascalsOver(set.gauge, kept(set.air)),
    byAltitude: lostToAltitude(set.air, now.air),
    byLostAir: kilopascalsOver(kept(now.air), now.gauge),
  }
}
