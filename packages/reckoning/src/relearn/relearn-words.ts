import type { SheetRelearn } from '../sheet.ts'

/**
 * How a vehicle is made to learn its sensors or its tires, as one paragraph: what holds for the method anywhere, with
 * the sheet's own words and figures in their places. The general words are common practice, no source; the vehicle
 * maker's procedure, which the sheet writes down, governs.
 */
export const relearnWords = (relearn: SheetRelearn): string =>
  [...templates[relearn.method](relearn), trap(relearn)].filter((sentence) => sentence !== '').join(' ')

/** What a step says where the sheet has no procedure: nothing is guessed. */
export const relearnNotOnSheet =
  "The sheet has no procedure. Find the vehicle maker's own, follow it wheel by wheel, and have it entered on the sheet."

type Template = (relearn: SheetRelearn) => readonly string[]

const alone = 'No other sensor within 15 feet, chargers unplugged, pressures at their targets.'

const templates: Readonly<Record<SheetRelearn['method'], Template>> = {
  automatic: (relearn) => [alone, relearn.entry, driven(relearn), relearn.confirmation, relearn.exit],
  stationary: (relearn) => [alone, relearn.entry, within(relearn), relearn.confirmation, relearn.exit],
  connector: (relearn) => [
    alone,
    relearn.entry,
    within(relearn),
    relearn.confirmation,
    relearn.exit,
    relearn.driveMinutes === null
      ? ''
      : `The light may stay on for the first ${relearn.driveMinutes} minutes of driving.`,
  ],
  reset: (relearn) => [
    'Pressures first: the vehicle takes what is in the tires as right.',
    relearn.entry,
    relearn.confirmation,
    relearn.exit,
  ],
}

const driven = ({ driveMinutes, driveSpeedMph }: SheetRelearn): string => {
  if (driveMinutes === null) return ''
  const speed = driveSpeedMph === null ? '' : ` at ${driveSpeedMph} mph or more where the road allows it`
  return `Then drive ${driveMinutes} minutes${speed}, without long stops.`
}

const within = ({ timeLimitMinutes }: SheetRelearn): string =>
  timeLimitMinutes === null ? '' : `All wheels within ${timeLimitMinutes} minutes, or begin again.`

const trap = ({ knownTrap }: SheetRelearn): string => (knownTrap === null ? '' : `Mind: ${knownTrap}`)
