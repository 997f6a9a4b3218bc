import type { PersonContent } from '@bayledger/contract/people'
import type { Prisma } from '@bayledger/db/generated/client'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { refuseEasyPassword, refuseEasyPin } from '../../core/easy-secrets.ts'
import { refuseUnlessOwnOrProvenOwner } from '../../core/own-or-owner.ts'
import { createRecord, type Kept, listRecordVersions, putRecordIn } from '../../core/record-versions.ts'
import { noteSecurityEvent } from '../../core/security-events.ts'
import type { Deps } from '../../deps.ts'
import { checkPassword, checkPin } from '../sessions/service/check-secret.ts'
import { firstPasswordUntil } from '../sessions/service/first-password.ts'
import { hashPassword, passwordMatches } from '../sessions/service/hash-password.ts'
import { secondStepAwaited } from '../sessions/service/second-step.ts'
import * as store from './store.ts'

type Key = { readonly key: string; readonly requestHash: string }

/** Everyone who works here or did. */
export const listPeople = (deps: Deps) => store.listPeople(deps.prisma, deps.shopId)

/** @throws RECORD_NOT_FOUND */
export const findPerson = async (deps: Deps, id: string): Promise<store.PersonRow> =>
  (await store.findPerson(deps.prisma, deps.shopId, id)) ?? refuseUnknown()

/** A person with who changed what, newest first. @throws RECORD_NOT_FOUND */
export const getPerson = async (deps: Deps, id: string) => {
  const [person, history] = await Promise.all([
    findPerson(deps, id),
    listRecordVersions(deps.prisma, deps.shopId, 'person', id),
  ])
  return { person, history }
}

/** Adds a person, who cannot sign in until a PIN or a password is set. @throws SIGN_IN_NAME_TAKEN */
export const createPerson = async (deps: Deps, actor: StaffActor, key: Key, content: PersonContent) => {
  const first = { ...content, pinVersion: 1, passwordVersion: 1 }
  const { id } = await createRecord(deps, actor, key, store.personRecords, first)
  return findPerson(deps, id)
}

/**
 * Saves a person over the version that was read. Whoever leaves is signed out everywhere at once.
 * @throws RECORD_NOT_FOUND, VERSION_STALE, SIGN_IN_NAME_TAKEN, LAST_OWNER
 */
export const putPerson = async (deps: Deps, actor: StaffActor, sent: Kept<PersonContent>) => {
  const { shopId } = deps
  await deps.prisma.$transaction(async (tx) => {
    const kept = await putOver(tx, deps, actor, sent, (found) => ({ ...found, ...sent.content }))
    if (!kept.content.active)
      await store.endSessions(tx, shopId, { staffId: sent.id, except: null, at: deps.clock.now() })
  })
  return findPerson(deps, sent.id)
}

type Setting = {
  readonly id: string
  readonly version: number
  readonly present: string | null
  /** From where it is set. */
  readonly address: string
}

/** @throws ACCESS_REFUSED, PROOF_NEEDED, PIN_UNSUITABLE, PIN_REFUSED, PASSWORD_REFUSED, SIGN_IN_BLOCKED, VERSION_STALE */
export const setPin = async (
  deps: Deps,
  actor: StaffActor,
  { pin, ...setting }: Setting & { pin: string },
) => {
  refuseUnlessOwnOrProvenOwner(actor, setting.id, deps.clock.now())
  refuseEasyPin(pin)
  const { pinHash } = await proven(deps, actor, setting, 'pin')
  if (pinHash !== null && (await passwordMatches(pin, pinHash)))
    throw new AppError({ code: 'PIN_UNSUITABLE', why: 'as-before' })
  return keepSecret(deps, actor, setting, { pinHash: await hashPassword(pin) })
}

/** @throws ACCESS_REFUSED, PROOF_NEEDED, PASSWORD_UNSUITABLE, PIN_REFUSED, PASSWORD_REFUSED, SIGN_IN_BLOCKED, VERSION_STALE */
export const setPassword = async (
  deps: Deps,
  actor: StaffActor,
  { password, ...setting }: Setting & { password: string },
) => {
  refuseUnlessOwnOrProvenOwner(actor, setting.id, deps.clock.now())
  await refuseEasyPassword(password)
  const { passwordHash } = await proven(deps, actor, setting, 'password')
  if (passwordHash !== null && (await passwordMatches(password, passwordHash)))
    throw new AppError({ code: 'PASSWORD_UNSUITABLE', why: 'as-before' })
  const isOwn = setting.id === actor.staffId
  return keepSecret(deps, actor, setting, {
    passwordHash: await hashPassword(password),
    firstPasswordUntil: isOwn ? null : firstPasswordUntil(deps.clock.now()),
  })
}

/** The person, who has proven that it is them where it is their own; with the other secret where they have not this one. */
const proven = async (
  deps: Deps,
  actor: StaffActor,
  { id, present, address }: Setting,
  secret: 'pin' | 'password',
): Promise<store.PersonRow> => {
  const person = await findPerson(deps, id)
  if (id !== actor.staffId) return person
  const typed = present ?? ''
  const byPin = secret === 'pin' ? person.pinHash !== null : person.passwordHash === null
  await (byPin
    ? checkPin(deps, { staffId: id, pin: typed, deviceId: null, address })
    : checkPassword(deps, { staffId: id, sessionId: actor.sessionId, address }, typed))
  return person
}

const keepSecret = async (
  deps: Deps,
  actor: StaffActor,
  { id, version }: Setting,
  secret: Parameters<typeof store.storeSecret>[3],
) => {
  const { shopId } = deps
  const except = id === actor.staffId ? actor.sessionId : null
  const next = actor.awaits === 'password' ? await secondStepAwaited(deps, id) : null
  await deps.prisma.$transaction(async (tx) => {
    await putOver(tx, deps, actor, { id, version }, (found) =>
      'pinHash' in secret
        ? { ...found, pinVersion: found.pinVersion + 1 }
        : { ...found, passwordVersion: found.passwordVersion + 1 },
    )
    await store.storeSecret(tx, shopId, id, secret)
    if (actor.awaits === 'password') await store.awaitNext(tx, shopId, actor.sessionId, next)
    await noteSecurityEvent(deps, tx, {
      kind: 'pinHash' in secret ? 'pin-set' : 'password-set',
      staffId: actor.staffId,
      aboutId: id,
    })
    await store.endSessions(tx, shopId, { staffId: id, except, at: deps.clock.now() })
  })
  return findPerson(deps, id)
}

/** Saves what `change` makes of the person as they are now, and its history. */
const putOver = async (
  tx: Prisma.TransactionClient,
  deps: Deps,
  actor: StaffActor,
  { id, version }: { readonly id: string; readonly version: number },
  change: (found: store.KeptPerson) => store.KeptPerson,
) => {
  const found = (await store.personRecords.lock(tx, deps.shopId, id)) ?? refuseUnknown()
  return putRecordIn(tx, deps, actor, store.personRecords, { id, version, content: change(found.content) })
}

const refuseUnknown = (): never => {
  throw new AppError({ code: 'RECORD_NOT_FOUND', what: 'person' })
}
