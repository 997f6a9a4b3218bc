import type {
  ErasedCounts,
  ErasureObstacle,
  ErasurePreview,
  ErasureReason,
  IdentityCheck,
} from '@bayledger/contract/erasures'
import { type Clock, day, money } from '../../../lib/format.ts'
import type { Option } from '../../../ui/select-field.tsx'

const things: Readonly<Record<keyof ErasedCounts, readonly [one: string, many: string]>> = {
  cards: ['customer card', 'customer cards'],
  vehicles: ['vehicle’s plate, VIN and notes', 'vehicles’ plates, VINs and notes'],
  words: ['name, signature or note in an order', 'names, signatures and notes in orders'],
  contacts: ['telephone number that was called', 'telephone numbers that were called'],
  shown: ['copy of what was shown and agreed to', 'copies of what was shown and agreed to'],
  photos: ['photo', 'photos'],
  reports: ['sealed report whose time is over', 'sealed reports whose time is over'],
  messages: ['address of a message', 'addresses of messages'],
  choices: ['choice about messages', 'choices about messages'],
  openings: ['time at which a link was opened', 'times at which a link was opened'],
  drafts: ['write-up that was begun', 'write-ups that were begun'],
  refused: ['refused entry', 'refused entries'],
}

/** What an erasure takes, one line a kind of thing; none of what is not there. */
export const goesLines = (counts: ErasedCounts): string[] =>
  Object.entries(things).flatMap(([kind, [one, many]]) => {
    const count = counts[kind as keyof ErasedCounts]
    return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`]
  })

/** What stays, and why. */
export const staysLines = (stays: ErasurePreview['stays'], now: string, clock: Clock): string[] => [
  ...(stays.orders === 0
    ? []
    : [
        `${stays.orders === 1 ? '1 order' : `${stays.orders} orders`} with ${stays.entries} entries: findings, readings, torque, prices and payments, without the person. They are the shop’s record of its work.`,
      ]),
  ...stays.reports.map(
    ({ number, until }) =>
      `Sealed report ${number} until ${day(until, now, clock)}, for an owner only: the law keeps it. Then it is erased too.`,
  ),
  'Backups hold the person until they are removed by their own rule.',
]

export const obstacleWords = (obstacle: ErasureObstacle): string => {
  switch (obstacle.why) {
    case 'held':
      return `There is a legal hold on ${obstacle.order === null ? 'this customer' : `order ${obstacle.order}`}: ${obstacle.reason}`
    case 'open':
      return `Order ${obstacle.order} is open.`
    case 'owed':
      return obstacle.cents > 0
        ? `Order ${obstacle.order}: ${money(obstacle.cents)} is still owed.`
        : `Order ${obstacle.order}: ${money(0 - obstacle.cents)} was paid too much.`
    case 'on-tablet':
      return `${obstacle.tablet} still keeps order ${obstacle.order}. Bring it into the network, or put it out.`
  }
}

export const erasureReasons: readonly Option<ErasureReason>[] = [
  { value: 'asked', label: 'The person asked for it' },
  { value: 'not-needed', label: 'The shop needs the data no more' },
]

export const identityChecks: readonly Option<IdentityCheck>[] = [
  { value: 'in-person', label: 'In person, by a document' },
  { value: 'called-back', label: 'Called back on the number we know' },
  { value: 'by-known-address', label: 'Wrote from the address we know' },
  { value: 'by-authority', label: 'Somebody with their written authority' },
]
