import type { MoveValues } from '@bayledger/ledger/questions/move'
import type { StepNamed } from '@bayledger/reckoning/step'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { capitalized, uncapitalized } from '../capitalized.ts'
import { gateWords } from '../gates.ts'
import type { MovesWording } from '../moves.ts'
import { stepDoes } from '../steps.ts'
import { wheelList } from '../wheels.ts'
import { conflicts } from './conflicts.ts'
import { findingTitles } from './finding-titles.ts'
import { gates } from './gates.ts'
import { steps } from './steps.ts'
import { troubles } from './troubles.ts'
import { wheels } from './wheels.ts'

const The = (wheel: WheelPosition | null, thing: string): string =>
  wheel === null ? `A ${thing}` : `${capitalized(wheels.names[wheel])} ${thing}`

const named = (step: StepNamed): string =>
  `${stepDoes(steps, step)}${step.wheel === null ? '' : `, ${wheels.names[step.wheel]}`}`

/** "35 min", "3 hours", "2 days": an estimate is no finer than that. */
const lateBy = (minutes: number): string => {
  if (minutes < 120) return `${minutes} min`
  const hours = Math.round(minutes / 60)
  return hours < 36 ? `${hours} hours` : `${Math.round(hours / 24)} days`
}

const waits: Readonly<Record<MoveValues['wait']['reason'], string>> = {
  'cooling-down': 'Waiting for the tires to cool.',
  'customer-returns': 'Waiting for the customer to return.',
  weather: 'Waiting for the weather.',
  part: 'Waiting for a part.',
  'trial-drive': 'The customer drives without the added devices.',
}

export const moves: MovesWording = {
  finished: () => 'Finished.',
  'torque-check': (wheel, { step }) =>
    step === null
      ? `Second person: ${wheel === null ? 'a wheel' : wheels.names[wheel]} is torqued and unchecked.`
      : `Second person: ${stepDoes(steps, step)}.`,
  'wheel-off': (wheel) => `${The(wheel, 'wheel')} is off.`,
  'wheel-untorqued': (wheel) => `${The(wheel, 'wheel')} is on and not torqued.`,
  'wheel-parked': (wheel, { what }) =>
    wheel === null
      ? 'Work is stopped: decide with the customer.'
      : `${The(wheel, 'wheel')} is parked, ${uncapitalized(troubles.names[what])}: decide with the customer.`,
  'handle-with-care': (_wheel, { danger, wheels: where }) => {
    const tire = where.length === 0 ? 'a tire' : `the ${wheelList(wheels, where)} tire`
    return danger === 'sealant'
      ? `Caution: sealant in ${tire}. Its gas can burn: no spark, no heat, purge it outdoors before the tire is opened.`
      : `Caution: ${tire} was driven low. No air before somebody has looked inside; it can burst.`
  },
  'stop-untold': (_wheel, { finding, wheels: where }) =>
    `Call the customer now: ${findingTitles[finding]}${where.length === 0 ? '' : `, ${wheelList(wheels, where)}`}.`,
  'sensor-broken': (wheel) =>
    `The working ${wheel === null ? '' : `${wheels.names[wheel]} `}sensor was broken in our hands: decide with the customer.`,
  wait: (_wheel, { reason }) => waits[reason],
  complaint: () => 'Write down the complaint.',
  sheet: () => 'Choose the specification sheet.',
  authority: () => 'Get consent to inspect.',
  'arrival-check': (_wheel, { left, first }) =>
    left === 1 ? gateWords(gates, first) : `Arrival check: ${left} things left. ${gateWords(gates, first)}`,
  'recorded-twice': (wheel, { fact, phase }) => conflicts(fact, wheel, phase),
  'findings-uncomputed': (_wheel, { changed }) =>
    changed ? 'The readings changed: look at the findings again.' : 'All readings are in: see the findings.',
  'findings-unconfirmed': () => 'Confirm the findings.',
  'comeback-cause-missing': () => 'Record why it came back: the price depends on it.',
  'estimate-missing': () => 'Build the estimate from the findings.',
  'estimate-unshown': () => 'Show the estimate to the customer.',
  'estimate-unanswered': () => 'Waiting for the customer to answer the estimate.',
  'estimate-undelivered': () => 'The estimate did not reach the customer: call, or send it another way.',
  'part-promised': (_wheel, { partCode }) => `Waiting for the part ${partCode}.`,
  'step-open': (_wheel, { step }) => `${named(step)}.`,
  'step-blocked': () => 'The next step waits for another; open the job plan.',
  'drive-open': (_wheel, { minutes, needed }) =>
    minutes > 0
      ? `Proof drive: ${minutes} of ${needed} minutes driven, keep going.`
      : `Proof drive: ${needed} minutes, then watch the light.`,
  'drive-doubtful': (_wheel, values) =>
    gateWords(gates, { code: 'drive-minutes-doubtful', wheel: null, values }),
  'seal-gate': (_wheel, { reason }) => gateWords(gates, reason),
  'payment-open': (_wheel, { sealed }) =>
    sealed ? 'Note the payment and hand back the vehicle.' : 'Note the payment and seal the report.',
  'report-unsealed': () => 'Seal the report.',
  keys: () => 'Hand back the vehicle.',
  'promise-slips': (_wheel, { minutes }) =>
    `Tell the customer: ready about ${lateBy(minutes)} after the promise.`,
}
