import { psi, psiApart } from '../evidence/si.ts'
import { treadDueSoon, wearBar } from '../tire/tread-limits.ts'
import { kelvins } from '../units/measured.ts'

/**
 * Every limit that the rules compare with. Pressures in kPa, temperatures and their differences in kelvin. Where
 * no source is named, the figure is common practice, no source.
 */
export const thresholds = {
  /** A lit lamp goes out only when the tire is set this far above its trigger. */
  hold: psiApart(3),
  /** A gauge value over this is a typing error: on a passenger tire, on any tire. */
  passengerGaugeMost: psi(100),
  anyGaugeMost: psi(150),
  /** Possible air temperatures: -40 to 257 °F (-40 to 125 °C), the range of a wheel sensor's own part. */
  coldestPlausible: 233.15,
  hottestPlausible: 398.15,

  /** Share of the placard at or under which a tire may have been damaged inside by running. */
  runLowShare: 0.5,
  /** The same for steel-cord light-truck tires (tire industry's zipper-rupture advice, from memory). */
  runLowShareSteelCord: 0.8,
  runLowAlways: psi(15),
  /** 30 °F. */
  hotCornerExcess: 30 / 1.8,
  wornOut32nds: wearBar.value,

  alikeDeficit: psiApart(2.5),
  alikeSpread: psiApart(2),
  coldShare: 0.6,
  /** How far a tire that is only cold may lie from what cold alone takes from it. */
  coldPredictsUnder: psiApart(1.5),
  coldPredictsOver: psiApart(2.5),
  /** 68 °F, where nobody knows how warm it was when the tires were set. */
  usualSetting: kelvins(293.15),
  /** Of the label figure, what seepage and neglect take; more has another cause. */
  seepageMost: 0.25,
  slowLossUnderMate: psiApart(3),
  slowLossDeficit: psiApart(3),
  /** The errors of two gauges and two thermometers, by which two readings differ without a leak: 1 psi and 5 °F. */
  gaugeError: psiApart(1),
  temperatureError: 5 / 1.8,
  leakDaysLeast: 0.5,
  leakDropFirm: psiApart(3),
  leakPerDay: psiApart(0.07),
  splitPlacard: psiApart(3),
  exchangedWithin: psiApart(1.5),
  altitudeRise: psiApart(0.5),
  altitudeWithin: psiApart(1.5),
  warmGaugeOver: psiApart(0.5),
  warmDeficit: psiApart(2),
  overInflatedShare: 1.2,
  nearSidewall: psiApart(1),
  /** Over the sidewall's maximum by more than a gauge and a thermometer may be wrong: the greater of 1 psi and 3 %. */
  overSidewall: psiApart(1),
  overSidewallShare: 0.03,
  underPlacard: psiApart(2),
  spareUnder: psiApart(5),
  spareUnderShare: 0.15,
  /** A gauge value so far from its own sensor's, and from every sensor's, is read again before it is believed. */
  gaugeFromOwnSensor: psiApart(10),
  gaugeFromAnySensor: psiApart(5),
  pressureRight: psiApart(1.5),

  offsetDiffers: psiApart(3),
  offsetsAlike: psiApart(1.5),
  offsetNotable: psiApart(1.5),
  offsetOfAltitudeWithin: psiApart(1),
  asleepAtMost: psi(0.5),
  learnRefusals: 2,
  spacedTries: 2,
  newSensorMonths: 12,
  usualLifeMonths: 96,

  judgedAfterMinutes: 20,
  tireOldYears: 6,
  tireVeryOldYears: 10,
  treadSoon32nds: treadDueSoon.value,
  /** A sensor that is this much older than its reported fitting date is not the one on the bill. */
  shelfMonths: 48,
} as const
