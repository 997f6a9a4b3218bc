import type { Access } from '@bayledger/contract/endpoint'
import type { Actor } from '../core/actor.ts'
import { AppError } from '../core/app-error.ts'

/** Refuses an actor without access to the endpoint: 401 if unidentified, 403 if identified. */
export const refuseUnlessAllowed = (access: Access, actor: Actor): void => {
  if (access.who === 'public') return
  if (access.who === 'customer-link') {
    if (actor.who === 'customer') return
    throw new AppError('LINK_REFUSED', 'Open the link from the shop again, or ask the shop for a new one.')
  }
  if (actor.who === 'nobody' || actor.who === 'customer')
    throw access.who === 'device'
      ? new AppError('DEVICE_UNKNOWN', 'Enroll this tablet with a code from the desk, then try again.')
      : new AppError('SESSION_MISSING', 'Sign in and try again. Nothing was changed.')
  if (actor.who === 'device') {
    if (access.who === 'device') return
    throw new AppError('SESSION_MISSING', 'Sign in with your PIN and try again. Nothing was changed.')
  }
  if (access.who === 'desk' && actor.kind !== 'desk')
    throw new AppError('ACCESS_REFUSED', 'This is done at the desk. Sign in there, or ask an advisor.')
  const roles = 'roles' in access ? access.roles : undefined
  if (roles && !actor.roles.some((role) => roles.includes(role)))
    throw new AppError(
      'ACCESS_REFUSED',
      `This takes one of these roles: ${roles.join(', ')}. Ask someone who has one.`,
    )
}
