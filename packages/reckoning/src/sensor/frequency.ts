/** A part of the radio spectrum in which wheel sensors send; figures in MHz. */
type FrequencyBand = {
  readonly words: string
  readonly nominalMHz: number
  readonly fromMHz: number
  readonly toMHz: number
}

/** Readers and labels round a frequency differently; nearer than this is the same one. In MHz. */
const sameFrequencyWithinMHz = 1

/**
 * The bands that wheel sensors are known to use. The list is open: a frequency that is not in it is not in the list, and
 * no error. In the 2.4 GHz band a sensor changes its channel all the time, so the whole band is one frequency.
 *
 * @units MHz
 * @source 315 and 433.92 MHz: public articles (quoted); 2,400 to 2,483.5 MHz: the common allocation (from memory); 1 MHz
 * either way: this program's own rule
 */
const frequencyBands: readonly FrequencyBand[] = [
  { words: '315 MHz', nominalMHz: 315, fromMHz: 314, toMHz: 316 },
  { words: '433.92 MHz', nominalMHz: 433.92, fromMHz: 432.92, toMHz: 434.92 },
  { words: '2.4 GHz', nominalMHz: 2_400, fromMHz: 2_400, toMHz: 2_483.5 },
]

/**
 * The band of a frequency, or `null` where it is not in the list.
 *
 * @units MHz
 * @source this program's own rule over `frequencyBands`
 */
export const bandOf = (megahertz: number): FrequencyBand | null =>
  frequencyBands.find(({ fromMHz, toMHz }) => megahertz >= fromMHz - slack && megahertz <= toMHz + slack) ??
  null

/**
 * Whether a vehicle that listens to one frequency can hear a sensor on another: within 1 MHz, or both in the 2.4 GHz
 * band.
 *
 * @units MHz
 * @formula |has − needed| ≤ 1
 * @limits Says nothing of the protocol, without which the vehicle hears and does not understand.
 * @source this program's own rule; no standard's width was read
 */
export const isSameFrequency = (hasMHz: number, neededMHz: number): boolean =>
  Math.abs(hasMHz - neededMHz) <= sameFrequencyWithinMHz + slack ||
  (isHighBand(hasMHz) && isHighBand(neededMHz))

const isHighBand = (megahertz: number): boolean => bandOf(megahertz)?.words === '2.4 GHz'

/** What the last binary digit of a typed decimal may be off. */
const slack = 1e-9
