import type { Distance } from '../quantity.ts'

/**
 * `impossible`: a display that shows only nines is at its end, or somebody filled the field. `backwards`: less than it
 * read before. `unlikely`: a figure to read twice.
 */
export type OdometerVerdict = 'plausible' | 'impossible' | 'backwards' | 'unlikely'

/** 500,000 mi is more than nearly any vehicle reads; a visit adds what our own drives add. */
export const odometerLimits = { lastReading: 999_999, unlikelyMiles: 500_000, visitMiles: 100 } as const

/**
 * Whether an odometer reading may be right.
 *
 * @units Miles or kilometers as they are read; compared in miles, 1 mi = 1.609344 km.
 * @limits A vehicle may have another instrument than it was built with: a reading under that of an earlier visit is for a
 * person to confirm, not an error.
 * @source The mile: NIST Special Publication 811, exact. The limits: common practice, no source.
 */
export const judgeOdometer = (read: Distance, before: Distance | null): OdometerVerdict => {
  if (read.value >= odometerLimits.lastReading) return 'impossible'
  const miles = milesOf(read)
  if (before !== null) {
    const added = miles - milesOf(before)
    // A display shows whole units: the same distance in the other unit may be one less.
    if (added < (read.unit === before.unit ? 0 : -1)) return 'backwards'
    if (added > odometerLimits.visitMiles) return 'unlikely'
  }
  return miles > odometerLimits.unlikelyMiles ? 'unlikely' : 'plausible'
}

const kilometersAMile = 1.609344

const milesOf = ({ value, unit }: Distance): number => (unit === 'mi' ? value : value / kilometersAMile)
