import type { StaffActor } from '../../core/actor.ts'
import { mayHaveContact } from '../../core/sides-for.ts'

/**
 * Whether customers are named in a file. Whoever meets customers sees one card at a time; all of them at once go to a manager
 * or the owner.
 */
export const mayExportCustomers = (actor: StaffActor): boolean =>
  mayHaveContact(actor) && actor.roles.some((role) => role === 'manager' || role === 'owner')
