import type { WrenchDoubt } from '@bayledger/ledger/hold'
import type { GateValues } from '@bayledger/ledger/questions/gate-reason'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { bundleTitle } from '../bundles.ts'
import type { GatesWording } from '../gates.ts'
import { stepDoes } from '../steps.ts'
import { bundles } from './bundles.ts'
import { conflicts } from './conflicts.ts'
import { findingTitles } from './finding-titles.ts'
import { heardLate } from './heard-late.ts'
import { steps } from './steps.ts'
import { parkedWords } from './troubles.ts'
import { wheels } from './wheels.ts'

/** "the left front wheel", or "a wheel" where none is named. */
const the = (wheel: WheelPosition | null, thing: string): string =>
  wheel === null ? `a ${thing}` : `the ${wheels.names[wheel]} ${thing}`

const The = (wheel: WheelPosition | null, thing: string): string =>
  wheel === null ? `A ${thing}` : `The ${wheels.names[wheel]} ${thing}`

const because = (doubt: WrenchDoubt): string => {
  switch (doubt.why) {
    case 'day':
      return `was due for calibration on ${doubt.dueOn}`
    case 'cycles':
      return `has ${doubt.cycles} clicks and is due at ${doubt.dueAt}`
    case 'quarantined':
      return 'is quarantined'
  }
}

const stopWords: Readonly<Record<GateValues['stop-open']['keeps'], (finding: string) => string>> = {
  here: (finding) => `A finding keeps the vehicle here: ${finding}. Repair it or record the refusal.`,
  'off-the-road': (finding) =>
    `A finding keeps the vehicle off the road: ${finding}. Settle it or record the refusal.`,
  refused: (finding) => `We do not drive it: ${finding}. The customer refused the repair on record.`,
}

export const gates: GatesWording = {
  sheet: () => 'Choose the specification sheet of this vehicle.',
  surroundings: () => 'Record the outdoor temperature and the state of the tires.',
  'warning-light': () => 'Turn the key on and record what the warning light does.',
  gauge: (wheel) => `Gauge ${the(wheel, 'tire')}.`,
  sensor: (wheel) => `Trigger ${the(wheel, 'sensor')}; silent counts after two spaced tries.`,
  tire: (wheel) => `Look at ${the(wheel, 'tire')}: stem, damage, nuts and studs, tread.`,
  'control-module': () => 'Read what the vehicle has stored, or record why it cannot be read.',
  'wheel-off': (wheel) => `${The(wheel, 'wheel')} is off.`,
  'wheel-untorqued': (wheel) => `${The(wheel, 'wheel')} is not torqued.`,
  'wheel-unchecked': (wheel) => `${The(wheel, 'wheel')} is torqued and unchecked: a second person checks it.`,
  'wheel-parked': parkedWords,
  'spare-not-on': (wheel) =>
    `By the refusal the vehicle leaves on its spare, and ${the(wheel, 'wheel')} is not replaced by it yet.`,
  'stop-open': (_wheel, { finding, keeps }) => stopWords[keeps](findingTitles[finding]),
  'wrench-doubtful': (wheel, doubt) =>
    'asWritten' in doubt
      ? doubt.asWritten
      : `The wrench ${doubt.wrench} ${because(doubt)}. Withdraw this round with a second person, then torque ${the(wheel, 'wheel')} again with another wrench.`,
  'device-clock-doubtful': (_wheel, { writtenAt, receivedAt }) =>
    `A device wrote an entry at ${atUtc(writtenAt)} by its own clock; we received it at ${atUtc(receivedAt)}. Set the device's clock, find out when the work was done, and settle it on the order page.`,
  'drive-minutes-doubtful': (_wheel, { typed, clock, by }) =>
    `A drive of ${typed} min was written down; ${by === 'timed' ? `by the tablet's clock it took ${clock} min` : by === 'clocks' ? `the tablet slept, and by the lesser of its two clocks it took ${clock} min` : `only ${clock} min had passed since the vehicle was last in the shop`}. Find out how long it was driven, and settle it on the order page or drive again.`,
  'heard-late': heardLate,
  'findings-unconfirmed': () => 'The findings are not confirmed by a technician.',
  'estimate-missing': () => 'Build the estimate from the findings and let the customer answer it.',
  'estimate-unanswered': (_wheel, { bundle }) =>
    `"${bundleTitle({ bundles, wheels }, bundle)}" has no answer yet. Ask the customer: Yes, No or Not today.`,
  'step-open': (wheel, { step }) =>
    `Still open: ${stepDoes(steps, step)}${wheel === null ? '' : `, ${wheels.names[wheel]}`}.`,
  'sensor-broken': (wheel) =>
    `The working ${wheel === null ? '' : `${wheels.names[wheel]} `}sensor was broken in our hands and is not replaced; the vehicle stays.`,
  'recorded-twice': (wheel, { fact, phase }) => conflicts(fact, wheel, phase),
}

const utc = new Intl.DateTimeFormat('en-US', { timeZone: 'UTC', dateStyle: 'medium', timeStyle: 'short' })

const atUtc = (instant: string): string => `${utc.format(new Date(instant))} UTC`
