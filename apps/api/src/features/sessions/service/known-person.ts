import type { StaffActor } from '../../../core/actor.ts'
import { AppError } from '../../../core/app-error.ts'
import { refuseUnlessOwnOrOwner } from '../../../core/own-or-owner.ts'
import type { Deps } from '../../../deps.ts'
import { findStaffById } from '../store.ts'

/** What is of a person of this shop is for them and for an owner. @throws ACCESS_REFUSED, RECORD_NOT_FOUND */
export const refuseUnlessKnownPerson = async (
  deps: Deps,
  actor: StaffActor,
  staffId: string,
): Promise<void> => {
  refuseUnlessOwnOrOwner(actor, staffId)
  if ((await findStaffById(deps, staffId)) === null)
    throw new AppError({ code: 'RECORD_NOT_FOUND', what: 'person' })
}
