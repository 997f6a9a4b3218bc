import type { StaffActor } from '../../../core/actor.ts'
import { refuseUnlessOwnOrProvenOwner } from '../../../core/own-or-owner.ts'
import { noteSecurityEvent } from '../../../core/security-events.ts'
import type { Deps } from '../../../deps.ts'
import { isOver } from '../policy.ts'
import * as store from '../store/open-sessions.ts'
import { checkPassword } from './check-secret.ts'
import { refuseUnlessKnownPerson } from './known-person.ts'

/** Where a person is signed in, the newest first. @throws ACCESS_REFUSED, RECORD_NOT_FOUND */
export const listSessions = async (deps: Deps, actor: StaffActor, staffId: string) => {
  const now = deps.clock.now()
  await refuseUnlessKnownPerson(deps, actor, staffId)
  return (await store.listSessionsNotEnded(deps, staffId)).filter((session) => !isOver(session, now))
}

/** Ends one session of a person; one that is over stays over. @throws ACCESS_REFUSED, PROOF_NEEDED, RECORD_NOT_FOUND */
export const endOneSession = async (
  deps: Deps,
  actor: StaffActor,
  { staffId, sessionId }: { readonly staffId: string; readonly sessionId: string },
): Promise<void> => {
  await endSessions(deps, actor, staffId, (session) => session.id === sessionId)
}

/** Ends every session of a person but the one that asks; gives how many. @throws ACCESS_REFUSED, PROOF_NEEDED, RECORD_NOT_FOUND */
export const endOtherSessions = (deps: Deps, actor: StaffActor, staffId: string): Promise<number> =>
  endSessions(deps, actor, staffId, (session) => session.id !== actor.sessionId)

const endSessions = async (
  deps: Deps,
  actor: StaffActor,
  staffId: string,
  isMeant: (session: store.OpenSessionRow) => boolean,
): Promise<number> => {
  refuseUnlessOwnOrProvenOwner(actor, staffId, deps.clock.now())
  const meant = (await listSessions(deps, actor, staffId)).filter(isMeant)
  const ended = await store.endNamedSessions(
    deps,
    staffId,
    meant.map(({ id }) => id),
  )
  if (ended > 0) {
    const details = { sessions: ended }
    const event = { kind: 'session-ended', staffId: actor.staffId, aboutId: staffId, details } as const
    await noteSecurityEvent(deps, deps.prisma, event)
  }
  return ended
}

/** Whoever is signed in proves with their password that it is still them. @throws PASSWORD_REFUSED, SIGN_IN_BLOCKED */
export const proveAgain = async (
  deps: Deps,
  { staffId, sessionId }: StaffActor,
  { password, address }: { readonly password: string; readonly address: string },
): Promise<void> => {
  await checkPassword(deps, { staffId, sessionId, address }, password)
  await store.markProven(deps, sessionId)
  await noteSecurityEvent(deps, deps.prisma, { kind: 'proven-again', staffId, address })
}
