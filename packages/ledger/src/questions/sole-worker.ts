import type { Author } from '../entry.ts'
import { bayRoles, type Role } from '../role.ts'

/** How long somebody who works alone waits after the last round before they check their own torque (common practice, no source). */
export const soleWorkerMinutes = 5

/** Whether nobody else at the shop could check this person's torque. */
export const isSoleWorker = (
  author: Author,
  { staff }: { readonly staff: ReadonlyMap<string, readonly Role[]> },
): boolean =>
  author.kind === 'staff' &&
  [...staff].every(([id, held]) => id === author.staffId || !held.some((role) => bayRoles.includes(role)))
