import type { Parked } from '@bayledger/ledger/questions/gate-reason'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { uncapitalized } from '../capitalized.ts'
import type { TroublesWording } from '../troubles.ts'
import { wheels } from './wheels.ts'

const at = (wheel: WheelPosition | null, thing: string): string =>
  wheel === null ? `a ${thing}` : `the ${wheels.names[wheel]} ${thing}`

const unsafeTire =
  (what: string) =>
  (wheel: WheelPosition | null): string =>
    `We found ${what} in ${at(wheel, 'tire')}. It can fail suddenly, so we do not put air in it or drive on it. It needs a new tire.`

const unsafeHub =
  (what: string) =>
  (wheel: WheelPosition | null): string =>
    `We found ${what} at ${at(wheel, 'wheel')}. It does not hold the wheel safely. It must be renewed before anybody drives.`

export const troubles: TroublesWording = {
  names: {
    stud: 'A stud or bolt is damaged',
    seat: 'A seat is wrong or damaged',
    thread: 'A thread is stripped',
    cut: 'The tire is cut',
    'run-low-inside': 'Damaged inside from running low',
    cord: 'Cord is showing',
    separation: 'The tire is coming apart inside',
    bulge: 'The tire has a bulge',
    hole: 'A hole that may be repaired',
    'hole-beyond-repair': 'A hole that must not be repaired',
    seized: 'Something is seized',
    silent: 'The sensor does not answer',
    'wrong-part': 'The part is wrong',
    other: 'Something else',
  },
  told: {
    stud: unsafeHub('a damaged stud or bolt'),
    seat: unsafeHub('a damaged fastener seat'),
    thread: unsafeHub('a stripped thread'),
    cut: unsafeTire('a cut'),
    'run-low-inside': unsafeTire('damage from running low'),
    cord: unsafeTire('cord showing'),
    separation: unsafeTire('layers that come apart'),
    bulge: unsafeTire('a bulge'),
    hole: (wheel) =>
      `We looked inside ${at(wheel, 'tire')} and found a hole that can be repaired from the inside, with a plug and patch together. We can now tell you the price.`,
    'hole-beyond-repair': (wheel) =>
      `There is a hole in ${at(wheel, 'tire')} that must not be repaired. We do not plug it or drive on it. It needs a new tire.`,
    seized: (wheel) =>
      `A part at ${at(wheel, 'wheel')} is seized. Going on by force may break it. We would like to agree with you on what to do.`,
    silent: (wheel) =>
      `The sensor of ${at(wheel, 'wheel')} does not answer. The warning light can come on again while it is silent.`,
    'wrong-part': (wheel) =>
      `The part for ${at(wheel, 'wheel')} turned out to be the wrong one. We get the right one before we go on.`,
    other: (wheel) =>
      `We found something that is not right${wheel === null ? '' : ` at ${at(wheel, 'wheel')}`}. We would like to agree with you on what to do.`,
  },
}

const waits: Readonly<Record<Parked['waitsFor'], string>> = {
  answer: "It waits for the customer's answer.",
  refused: 'The customer refused the repair on record.',
  part: 'It waits for the new part.',
  repair: 'It waits for the repair.',
}

/** "The left front wheel is parked: a stud or bolt is damaged. It waits for the new part." */
export const parkedWords = (wheel: WheelPosition | null, { what, waitsFor }: Parked): string => {
  const found = uncapitalized(troubles.names[what])
  return wheel === null
    ? `Work is stopped. ${waits[waitsFor]}`
    : `The ${wheels.names[wheel]} wheel is parked: ${found}. ${waits[waitsFor]}`
}
