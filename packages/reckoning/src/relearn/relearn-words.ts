import type { SheetRelearn, SpecificationSheet } from '../sheet.ts'
import type { WheelPosition } from '../wheels.ts'
import { methodNotes, type RelearnTemplate, relearnTemplate } from './relearn-template.ts'

/**
 * How a vehicle is made to learn its sensors or its tires, as one paragraph: what holds for the method anywhere, with
 * the sheet's own words and figures in their places. A figure that the sheet lacks is named as lacking.
 *
 * @units min, mi/h
 * @limits The vehicle maker's procedure, which the sheet writes down, governs.
 * @source General words: common practice, no source. Figures and procedure: the sheet.
 */
export const relearnWords = (
  relearn: SheetRelearn,
  vehicle: Pick<SpecificationSheet, 'spare' | 'spareMonitored'>,
): string => {
  const template = relearnTemplate(relearn, vehicle)
  return [
    ...inOrder(template),
    methodNotes(template.method).lightMeanwhile,
    template.knownTrap === null ? '' : `Mind: ${template.knownTrap}`,
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')
}

/** What a step says where the sheet has no procedure: nothing is guessed. */
export const relearnNotOnSheet =
  "The sheet has no procedure. Find the vehicle maker's own, follow it wheel by wheel, and have it entered on the sheet."

const alone = 'No other sensor within 15 feet, chargers unplugged, pressures at their targets.'

const inOrder = (template: RelearnTemplate): readonly string[] => {
  const { entry, confirmation, exit } = template
  switch (template.method) {
    case 'automatic':
      return [alone, entry, parked(template.parkMinutes), driven(template), confirmation, exit]
    case 'stationary':
      return [alone, entry, triggered(template.order), within(template.timeLimitMinutes), confirmation, exit]
    case 'connector':
      return [
        alone,
        `Read ${template.order.join(', ')} first.`,
        entry,
        confirmation,
        exit,
        lit(template.driveMinutes),
      ]
    case 'reset':
      return [
        'Pressures first: the vehicle takes what is in the tires as right.',
        entry,
        confirmation,
        exit,
        learning(template.driveMinutes),
      ]
  }
}

const triggered = (order: readonly WheelPosition[]): string =>
  `Trigger ${order.join(', ')}, each once the one before is confirmed.`

const parked = (minutes: number | null): string =>
  minutes === null ? 'The sheet does not say how long to park.' : `At least ${minutes} minutes parked.`

const driven = ({
  driveMinutes,
  driveSpeedMph,
}: Pick<Extract<RelearnTemplate, { method: 'automatic' }>, 'driveMinutes' | 'driveSpeedMph'>): string => {
  if (driveMinutes === null) return "The sheet does not say how long to drive: see the maker's procedure."
  const speed = driveSpeedMph === null ? '' : ` at ${driveSpeedMph} mph or more where the road allows it`
  return `Then drive ${driveMinutes} minutes${speed}, without long stops.`
}

const within = (minutes: number | null): string =>
  minutes === null
    ? 'The sheet names no time limit: do not pause.'
    : `All wheels within ${minutes} minutes, or begin again.`

const lit = (minutes: number | null): string =>
  minutes === null ? '' : `The light may stay on for the first ${minutes} minutes of driving.`

const learning = (minutes: number | null): string =>
  minutes === null ? '' : `It learns over up to ${minutes} minutes of driving: tell the customer.`
