import type { SpareHelp } from '@bayledger/ledger/questions/dangers'
import type { WarmTires } from '@bayledger/ledger/questions/next-steps'
import type { Gauging, GaugingReason } from '@bayledger/ledger/questions/verdicts'
import type { Temperature } from '@bayledger/reckoning/quantity'
import { capitalized } from '../capitalized.ts'
import type { Contact, NextStepsWording } from '../next-steps.ts'
import { telephoneWords } from '../telephone.ts'
import { wheelList } from '../wheels.ts'
import { wheels as wheelNames } from './wheels.ts'

/** No digit that was entered is dropped, up to three decimals. */
const number = (value: number): string => value.toLocaleString('en-US', { maximumFractionDigits: 3 })

const tenth = (psi: number): string =>
  psi.toLocaleString('en-US', { minimumFractionDigits: 1, maximumFractionDigits: 1 })

const degrees = ({ value, unit }: Temperature): string => `${number(value).replace('-', '−')} °${unit}`

const dayWords = (day: string): string =>
  new Intl.DateTimeFormat('en-US', {
    timeZone: 'UTC',
    year: 'numeric',
    month: 'short',
    day: 'numeric',
  }).format(new Date(`${day}T00:00:00.000Z`))

const callUs = ({ telephone }: Contact): string =>
  telephone === null ? 'call us' : `call us, ${telephoneWords(telephone)}`

const tow = 'Have it towed'

const towOrSpare = (help: SpareHelp): string => {
  switch (help.spare) {
    case 'full-size':
      return `${tow}, or have us fit the spare in its place: full size, ${tenth(help.psi)} psi, no damage seen.`
    case 'temporary':
      return `${tow}, or have us fit the temporary spare (${tenth(help.psi)} psi). Obey the limits of speed and distance on its sidewall.`
    case 'low':
      return `${tow}. The spare cannot be used as it is: it has ${tenth(help.psi)} psi of ${number(help.label)}.`
    case 'damaged':
      return `${tow}. The spare cannot be used: its tire is damaged.`
    case 'not-checked':
      return `${tow}. We did not check the spare; do not count on it.`
    case 'none':
      return `${tow}. It has no spare.`
    case 'no-help':
      return `${tow}. The spare does not help here.`
  }
}

const warmTires = ({ wheels, psi, labelPsi, outdoor, coldPsi, tonight, afterADrive }: WarmTires): string => {
  const cold =
    coldPsi === null
      ? ''
      : `: cold, expect ${tenth(coldPsi)} psi at ${degrees(outdoor)}${tonight ? `, ${tenth(tonight.psi)} at ${degrees(tonight.low)} tonight` : ''}${afterADrive ? `; after a drive (air at ${degrees(afterADrive.air)}) up to ${tenth(afterADrive.psi)}` : ''}`
  const names = wheelList(wheelNames, wheels)
  const of = names === wheelNames.allFour ? 'The' : `${capitalized(names)}: the`
  return `${of} label says ${number(labelPsi)} and we set ${tenth(psi)}, because the tires were warm${cold}. Do not let air out of a warm tire.`
}

const often: Readonly<Record<Gauging['every'], string>> = {
  trip: 'before every trip',
  week: 'once a week',
  month: 'once a month',
}

const because: Readonly<Record<GaugingReason, string>> = {
  'tire-low': 'because a tire has less air than it should',
  'cannot-warn': 'because the light cannot warn you now',
  'safety-left': 'because safety work was not done',
  'work-left': 'because of work that was not done',
  'not-gauged': 'because we could not measure every tire',
  'cause-not-found': 'because we have not found the cause of the light',
  'not-proven': 'because we are not sure of the repair yet',
}

export const nextSteps: NextStepsWording = {
  'call-before-moving': (_, contact) =>
    `Before it is moved, ${callUs(contact)}${contact.person === null ? '' : `, or ask for ${contact.person} at the counter`}.`,
  'tow-or-spare': towOrSpare,
  'on-the-spare': ({ wheel, spare }) =>
    spare === 'temporary'
      ? `The temporary spare is on in place of the ${wheelNames.names[wheel]} wheel. Keep to the limits of speed and distance on its sidewall, and have the tire repaired soon. The warning light may stay on until then.`
      : `The spare is on in place of the ${wheelNames.names[wheel]} wheel. Have the tire that came off repaired soon: until then you have no spare, and the warning light may stay on.`,
  retorque: ({ miles, at }) => {
    const readings = at
      ? `, at ${number(Math.round(at.from.value))} to ${number(Math.round(at.to.value))} ${at.to.unit}`
      : ''
    return `In ${number(miles.from)} to ${number(miles.to)} miles${readings}: come back for a free check that the wheels are tight, no appointment.`
  },
  'report-the-light': ({ minutes }, contact) =>
    `Drive ${minutes} minutes to be sure. If the warning light is on then, check the air in the tires with a gauge and ${callUs(contact)}.`,
  'if-light-returns': (_, contact) =>
    `If the light comes back, check the air in all cold tires with a gauge and ${callUs(contact)}.`,
  'light-stays-on': () =>
    'The warning light stays on until its cause is repaired. While it is on, it cannot tell you of another low tire.',
  'warm-tires': warmTires,
  'set-again-cold': ({ wheels, psi, coldPsi }) =>
    `${capitalized(wheelList(wheelNames, wheels))}: set to the limit, ${tenth(psi)} psi${coldPsi === null ? '' : `, which is ${tenth(coldPsi)} cold`}. Have it set again cold.`,
  'check-pressures': ({ every, why, firstBy }) =>
    `Check the air in all tires with a gauge ${often[every]}${every === 'trip' ? '' : `, first by ${dayWords(firstBy)}`}${why === null ? '' : `, ${because[why]}`}. Check cold tires (parked 3 hours, or driven under a mile), against the door label. Let air out only of a cold tire that is over it.`,
  'deferred-work': ({ day }) => `What you answered with “Not today” comes up again on ${dayWords(day)}.`,
}
