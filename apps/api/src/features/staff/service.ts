import type { Prisma } from '@bayledger/db/generated/client'
import type { Agreement } from '@bayledger/ledger/agreement'
import type { Role } from '@bayledger/ledger/role'
import { provenByDoer } from '@bayledger/ledger/second-person'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import type { CalledFrom } from '../../core/called-from.ts'
import { newToken, tokenDigest } from '../../core/tokens.ts'
import type { Deps } from '../../deps.ts'
import { checkPin } from '../sessions/service/check-secret.ts'
import { agreementMinutes, rolesLacking } from './policy.ts'
import * as store from './store.ts'

/** Everyone by name: who works here now, and who did. What somebody signed keeps their name after they left. */
export const listStaff = async (deps: Deps) => {
  const everyone = await store.listStaff(deps)
  return {
    staff: everyone.filter(({ active }) => active),
    former: everyone.filter(({ active }) => !active),
  }
}

export const worksHere = (deps: Deps, staffId: string): Promise<boolean> => store.isActive(deps, staffId)

/**
 * Lets a second person agree to one entry with their PIN; whoever seals a torque check proves with it that it was them. The token is bound to them and to the entry's order, id, kind
 * and content; since an id is written once, it is good once.
 */
export const proveSecondPerson = async (
  deps: Deps,
  actor: StaffActor,
  { address }: CalledFrom,
  { staffId, pin, agreesTo }: { staffId: string; pin: string; agreesTo: Agreement },
): Promise<{ token: string; expiresAt: string }> => {
  if (staffId === actor.staffId && !provenByDoer.has(agreesTo.kind))
    throw new AppError({ code: 'SECOND_PERSON_REFUSED', why: 'is-the-writer' })
  const { roles } = await checkPin(deps, { staffId, pin, deviceId: actor.deviceId, address })
  const needed = rolesLacking(agreesTo.kind, roles as Role[])
  if (needed) throw new AppError({ code: 'SECOND_PERSON_REFUSED', why: 'lacks-the-role', roles: needed })
  const token = newToken()
  const now = deps.clock.now()
  const expiresAt = new Date(now.getTime() + agreementMinutes * 60_000)
  await store.insertProof(deps, { tokenHash: tokenDigest(token), staffId, agreesTo, now, expiresAt })
  return { token, expiresAt: expiresAt.toISOString() }
}

/** Whether a second person earned this token with their PIN for this very figure, and it may still be used. */
export const hasProvenFigure = async (
  tx: Prisma.TransactionClient,
  shopId: string,
  of: { readonly token: string; readonly staffId: string; readonly digest: string; readonly now: Date },
): Promise<boolean> => {
  const { token, ...rest } = of
  return (await store.findFigureProof(tx, shopId, { tokenHash: tokenDigest(token), ...rest })) !== null
}
