/**
 * How many of a part should lie on the shelf, so that a delivery comes in time in the shop's busiest week.
 *
 * @formula days of delivery × pieces used a day × 3, rounded up; 0 where none was used
 * @units Pieces, days.
 * @source Common practice, no source: three times the usual use in the week of the first freeze.
 */
export const suggestedMinimum = ({
  drawn,
  inDays,
  leadDays,
}: {
  readonly drawn: number
  readonly inDays: number
  readonly leadDays: number
}): number => Math.ceil((Math.max(0, drawn) * leadDays * firstFreezeFactor) / inDays)

const firstFreezeFactor = 3
