import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { Author } from '../entry.ts'
import { bayRoles, type Role } from '../role.ts'
import { isSamePerson } from '../same-person.ts'
import type { OrderState } from '../state.ts'
import { torquedBy } from './gates.ts'

/** How long somebody who works alone waits after the last round before they check their own torque (common practice, no source). */
export const soleWorkerMinutes = 5

/** Whether this person is the only one at the shop who could check the torque. */
export const isSoleWorker = (
  author: Author,
  { staff }: { readonly staff: ReadonlyMap<string, readonly Role[]> },
): boolean =>
  author.kind === 'staff' &&
  [...staff].every(([id, held]) => id === author.staffId || !held.some((role) => bayRoles.includes(role)))

/** Wheels whose torque was checked by somebody who had torqued them: no second person was available. */
export const checkedAlone = (state: OrderState): WheelPosition[] =>
  readingOrder.filter((wheel) => {
    const work = state.work[wheel]
    const checker = work?.checked?.written.by
    return checker !== undefined && torquedBy(work).some((doer) => isSamePerson(doer, checker))
  })
