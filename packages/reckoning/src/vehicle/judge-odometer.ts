import type { Distance } from '../quantity.ts'

/**
 * `impossible`: a display at its end, or a field that somebody filled. `backwards`: less than it read before in this
 * visit. `lower`: less than at an earlier visit. `unlikely`: more than nearly any vehicle reads, or than one is driven
 * in that time. `nines`: nothing but nines.
 */
export type OdometerVerdict = 'plausible' | 'impossible' | 'backwards' | 'lower' | 'unlikely' | 'nines'

/** What an odometer read before. `daysAgo`: at an earlier visit, in whole days rounded up; `null`: in this visit. */
export type OdometerBefore = { readonly distance: Distance; readonly daysAgo: number | null }

/**
 * 500,000 mi is more than nearly any vehicle reads; a visit adds what our own drives add; 1,000 mi is a long day at the
 * wheel.
 */
export const odometerLimits = {
  lastReading: 999_999,
  unlikelyMiles: 500_000,
  visitMiles: 100,
  milesADay: 1_000,
} as const

/**
 * Whether an odometer reading may be right.
 *
 * @units Miles or kilometers as they are read; compared in miles, 1 mi = 1.609344 km.
 * @limits A vehicle may have another instrument than it was built with: a reading under that of an earlier visit is for a
 * person to confirm, not an error. Within one visit it is an error.
 * @source The mile: NIST Special Publication 811, exact. The limits: common practice, no source.
 */
export const judgeOdometer = (read: Distance, before: OdometerBefore | null): OdometerVerdict => {
  if (read.value >= odometerLimits.lastReading) return 'impossible'
  const miles = milesOf(read)
  if (before !== null) {
    const { distance, daysAgo } = before
    const added = miles - milesOf(distance)
    // A display shows whole units: the same distance in the other unit may be one less.
    if (added < (read.unit === distance.unit ? 0 : -1)) return daysAgo === null ? 'backwards' : 'lower'
    if (added > odometerLimits.visitMiles + (daysAgo ?? 0) * odometerLimits.milesADay) return 'unlikely'
  }
  if (miles > odometerLimits.unlikelyMiles) return 'unlikely'
  return /^9{4,}$/.test(String(read.value)) ? 'nines' : 'plausible'
}

/**
 * Whether a reading counts once somebody has read it a second time.
 *
 * @source Common practice, no source.
 */
export const isConfirmable = (verdict: OdometerVerdict): boolean =>
  verdict === 'lower' || verdict === 'unlikely' || verdict === 'nines'

const kilometersAMile = 1.609344

const milesOf = ({ value, unit }: Distance): number => (unit === 'mi' ? value : value / kilometersAMile)
