import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'

/** Everybody sets their own PIN and password; those of somebody else are an owner's to renew. @throws ACCESS_REFUSED */
export const refuseUnlessOwnOrOwner = (actor: StaffActor, staffId: string): void => {
  if (actor.staffId !== staffId && !actor.roles.includes('owner'))
    throw new AppError({ code: 'ACCESS_REFUSED', needs: ['owner'] })
}
