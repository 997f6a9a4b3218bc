import type { Access } from '@bayledger/contract/endpoint'
import type { FastifyRequest } from 'fastify'
import {
  type Actor,
  type CustomerActor,
  type DeviceActor,
  type FoundSession,
  mint,
  type NobodyActor,
  type SessionCall,
  type StaffActor,
} from '../core/actor.ts'
import { AppError } from '../core/app-error.ts'
import { tokenDigest } from '../core/tokens.ts'
import { readCookie } from './cookies.ts'

/** What `identify` needs from the features that keep sessions, tablets and links. */
export type Credentials = {
  readonly findSession: (tokenHash: string, call: SessionCall) => Promise<FoundSession | 'over' | null>
  readonly findDevice: (
    tokenHash: string,
  ) => Promise<{ shopId: string; deviceId: string; locationId: string } | null>
  readonly findLink: (
    tokenHash: string,
  ) => Promise<{ shopId: string; linkId: string; orderId: string } | null>
}

/** A page says so of what it reads while somebody uses it. A write is always an act. */
const isAct = ({ method, headers }: FastifyRequest): boolean =>
  (method !== 'GET' && method !== 'HEAD') || headers['bayledger-act'] === 'person'

export type Identify = (request: FastifyRequest, access: Access) => Promise<Actor>

/**
 * Finds out who calls. A browser may hold a desk's and a bay's session at once (one cookie each); the face that
 * is in use names itself in `Bayledger-Face`; without that header the desk's comes first.
 */
export const identifyWith =
  (credentials: Credentials, tls: boolean): Identify =>
  async (request, access) => {
    const nobody = mint<NobodyActor>({ who: 'nobody' })
    if (access.who === 'public') return nobody
    if (access.who === 'customer-link') {
      const token = readCookie(request, 'customer', tls)
      const link = token === null ? null : await credentials.findLink(tokenDigest(token))
      return link ? mint<CustomerActor>({ who: 'customer', ...link }) : nobody
    }
    const mayRecall = 'session' in access && access.session === 'checked-by-the-write'
    const call = { mayRecall, isAct: isAct(request) }
    const staff = await findStaff(request, (hash) => credentials.findSession(hash, call), tls)
    if (staff && staff !== 'over') return mint<StaffActor>({ who: 'staff', ...staff })
    const token = readCookie(request, 'device', tls)
    const device = token === null ? null : await credentials.findDevice(tokenDigest(token))
    if (device && access.who === 'device') return mint<DeviceActor>({ who: 'device', ...device })
    // On a tablet that was put out the session is over too, and what it needs is its enrollment.
    const asksForTablet = access.who === 'device' && request.headers['bayledger-face'] === 'bay'
    if (staff === 'over' && !asksForTablet) throw new AppError({ code: 'SESSION_EXPIRED' })
    return device ? mint<DeviceActor>({ who: 'device', ...device }) : nobody
  }

const findStaff = async (
  request: FastifyRequest,
  findSession: (tokenHash: string) => Promise<FoundSession | 'over' | null>,
  tls: boolean,
): Promise<FoundSession | 'over' | null> => {
  const face = request.headers['bayledger-face']
  const names =
    face === 'bay' ? (['bay'] as const) : face === 'desk' ? (['desk'] as const) : (['desk', 'bay'] as const)
  let ended: 'over' | null = null
  for (const name of names) {
    const token = readCookie(request, name, tls)
    if (token === null || token === '') continue
    const found = await findSession(tokenDigest(token))
    if (found && found !== 'over') return found
    ended = 'over'
  }
  return ended
}
