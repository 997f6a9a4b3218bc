import type { RelearnTemplate } from '@bayledger/reckoning/relearn/relearn-template'
import type { RelearnWording } from '../relearn.ts'

export const relearn: RelearnWording = {
  procedure: {
    automatic: (template) =>
      joined(
        alone,
        template.entry,
        template.parkMinutes === null
          ? 'The sheet does not say how long to park.'
          : `At least ${template.parkMinutes} minutes parked.`,
        driven(template.driveMinutes, template.driveSpeedMph),
        ...atTheEnd(template, 'The light stays as it was until the vehicle has learned.'),
      ),
    stationary: (template) =>
      joined(
        alone,
        template.entry,
        `Trigger ${template.order.join(', ')}, each once the one before is confirmed.`,
        template.timeLimitMinutes === null
          ? 'The sheet names no time limit: do not pause.'
          : `All wheels within ${template.timeLimitMinutes} minutes, or begin again.`,
        ...atTheEnd(template, 'Many vehicles flash the light or show a message the whole time.'),
      ),
    connector: (template) =>
      joined(
        alone,
        `Read ${template.order.join(', ')} first.`,
        template.entry,
        template.confirmation,
        template.exit,
        template.driveMinutes === null
          ? ''
          : `The light may stay on for the first ${template.driveMinutes} minutes of driving.`,
        'The light may stay on until the first messages come, some minutes into driving.',
        trap(template),
      ),
    reset: (template) =>
      joined(
        'Pressures first: the vehicle takes what is in the tires as right.',
        template.entry,
        template.confirmation,
        template.exit,
        template.driveMinutes === null
          ? ''
          : `It learns over up to ${template.driveMinutes} minutes of driving: tell the customer.`,
        'The light goes out, and the vehicle goes on learning while it is driven.',
        trap(template),
      ),
  },
  notOnSheet:
    "The sheet has no procedure. Find the vehicle maker's own, follow it wheel by wheel, and have it entered on the sheet.",
}

const alone = 'No other sensor within 15 feet, chargers unplugged, pressures at their targets.'

const atTheEnd = (template: RelearnTemplate, light: string): string[] => [
  template.confirmation,
  template.exit,
  light,
  trap(template),
]

const trap = ({ knownTrap }: RelearnTemplate): string => (knownTrap === null ? '' : `Mind: ${knownTrap}`)

const driven = (minutes: number | null, speedMph: number | null): string => {
  if (minutes === null) return "The sheet does not say how long to drive: see the maker's procedure."
  const speed = speedMph === null ? '' : ` at ${speedMph} mph or more where the road allows it`
  return `Then drive ${minutes} minutes${speed}, without long stops.`
}

const joined = (...sentences: readonly string[]): string =>
  sentences.filter((sentence) => sentence !== '').join(' ')
