import { type SideKind, sideKinds } from '@bayledger/ledger/side-kinds'
import type { StaffActor } from './actor.ts'

const everySide: ReadonlySet<SideKind> = new Set(sideKinds)
const bareSides: ReadonlySet<SideKind> = new Set(['personal'])

/**
 * The kinds of side that a signed-in person is sent. This is the one place that decides it: a tablet, whoever holds it,
 * and a person who is a technician and nothing else get no money, nothing a customer was shown with prices in it, and
 * no way to reach the customer.
 */
export const sidesFor = ({ kind, roles }: Pick<StaffActor, 'kind' | 'roles'>): ReadonlySet<SideKind> =>
  kind === 'desk' && roles.some((role) => role !== 'technician') ? everySide : bareSides

/** Whether prices, sums and sealed reports may go to this person, wherever they are outside of sides. */
export const mayHaveMoney = (actor: Pick<StaffActor, 'kind' | 'roles'>): boolean =>
  sidesFor(actor).has('money')

/** Whether a customer's telephone number and e-mail address may go to this person. */
export const mayHaveContact = (actor: Pick<StaffActor, 'kind' | 'roles'>): boolean =>
  sidesFor(actor).has('contact')
