import type { Access } from '@bayledger/contract/endpoint'
import type { Actor } from '../core/actor.ts'
import { AppError } from '../core/app-error.ts'
import { refuseUnlessFinished } from '../core/finished-sign-in.ts'
import { refuseUnlessProven } from '../core/recent-proof.ts'

/** Refuses an actor without access to the endpoint: 401 if unidentified, 403 if identified, not proven lately, or not done with signing in. */
export const refuseUnlessAllowed = (access: Access, actor: Actor, now: Date): void => {
  if (access.who === 'public') return
  if (access.who === 'customer-link') {
    if (actor.who === 'customer') return
    throw new AppError({ code: 'LINK_REFUSED' })
  }
  if (actor.who === 'nobody' || actor.who === 'customer')
    throw access.who === 'device'
      ? new AppError({ code: 'DEVICE_UNKNOWN' })
      : new AppError({ code: 'SESSION_MISSING', signInBy: 'password' })
  if (actor.who === 'device') {
    if (access.who === 'device') return
    throw new AppError({ code: 'SESSION_MISSING', signInBy: 'pin' })
  }
  refuseUnlessFinished(actor, 'awaiting' in access ? access.awaiting : [])
  if (access.who === 'desk' && actor.kind !== 'desk')
    throw new AppError({ code: 'ACCESS_REFUSED', needs: 'desk' })
  const roles = 'roles' in access ? access.roles : undefined
  if (roles && !actor.roles.some((role) => roles.includes(role)))
    throw new AppError({ code: 'ACCESS_REFUSED', needs: roles })
  if ('proof' in access) refuseUnlessProven(actor, now)
}
