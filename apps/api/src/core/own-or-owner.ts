import type { StaffActor } from './actor.ts'
import { AppError } from './app-error.ts'
import { refuseUnlessFinished } from './finished-sign-in.ts'
import { refuseUnlessProven } from './recent-proof.ts'

/** What is of a person is read by them and by an owner. @throws ACCESS_REFUSED, SIGN_IN_UNFINISHED */
export const refuseUnlessOwnOrOwner = (actor: StaffActor, staffId: string): void => {
  if (actor.staffId === staffId) return
  refuseUnlessFinished(actor)
  if (!actor.roles.includes('owner')) throw new AppError({ code: 'ACCESS_REFUSED', needs: ['owner'] })
}

/** It is changed by them, and by an owner who has proven lately that it is them. @throws ACCESS_REFUSED, PROOF_NEEDED */
export const refuseUnlessOwnOrProvenOwner = (actor: StaffActor, staffId: string, now: Date): void => {
  refuseUnlessOwnOrOwner(actor, staffId)
  if (actor.staffId !== staffId) refuseUnlessProven(actor, now)
}
