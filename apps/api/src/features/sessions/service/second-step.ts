import { randomBytes } from 'node:crypto'
import type { Awaited } from '@bayledger/contract/endpoint'
import { sealBox } from '@bayledger/ledger/sealed-box'
import { findAccessRules } from '../../../core/access-rules.ts'
import type { StaffActor } from '../../../core/actor.ts'
import { AppError } from '../../../core/app-error.ts'
import { noteSecurityEvent } from '../../../core/security-events.ts'
import { newSpokenCode, plainCode } from '../../../core/spoken-code.ts'
import { tokenDigest } from '../../../core/tokens.ts'
import { stepOfCode, toBase32 } from '../../../core/totp.ts'
import type { Deps } from '../../../deps.ts'
import { recoveryCodes, secretBytes } from '../policy.ts'
import { listPasskeys } from '../store/keep-passkeys.ts'
import { finishSignIn } from '../store/open-sessions.ts'
import * as store from '../store/second-step.ts'
import { refuseUnlessKnownPerson } from './known-person.ts'

/** @throws ACCESS_REFUSED, RECORD_NOT_FOUND */
export const getSecondStep = async (deps: Deps, actor: StaffActor, staffId: string) => {
  await refuseUnlessKnownPerson(deps, actor, staffId)
  const found = await store.findSecondStep(deps, staffId)
  const isOn = found !== null && found.confirmedAt !== null
  return { isOn, recoveryCodesLeft: isOn ? await store.countRecoveryCodes(deps, staffId) : 0 }
}

/** Makes a secret for the authenticator app of whoever asks. It is sealed to the server's key before it is kept. */
export const beginSecondStep = async (deps: Deps, { staffId, name }: StaffActor) => {
  const secret = randomBytes(secretBytes)
  await store.begin(deps, staffId, await sealBox(deps.sealing.publicKey, secret.toString('base64')))
  const written = toBase32(secret)
  const label = encodeURIComponent(`Bayledger:${name}`)
  return { secret: written, address: `otpauth://totp/${label}?secret=${written}&issuer=Bayledger` }
}

/** Counts from the first right code on. Gives the recovery codes, of which only digests are kept. @throws SECOND_STEP_REFUSED */
export const confirmSecondStep = async (deps: Deps, { staffId, sessionId }: StaffActor, code: string) => {
  const step = await stepOf(deps, staffId, code)
  if (step === null) throw new AppError({ code: 'SECOND_STEP_REFUSED' })
  const codes = Array.from({ length: recoveryCodes.count }, () =>
    newSpokenCode(recoveryCodes.groups, recoveryCodes.signsEach),
  )
  const codeHashes = codes.map((one) => tokenDigest(plainCode(one)))
  await store.confirm(deps, staffId, { step, codeHashes })
  await finishSignIn(deps, sessionId)
  await noteSecurityEvent(deps, deps.prisma, { kind: 'second-step-on', staffId })
  return codes
}

/** @throws ACCESS_REFUSED, RECORD_NOT_FOUND */
export const endSecondStep = async (deps: Deps, actor: StaffActor, staffId: string): Promise<void> => {
  await refuseUnlessKnownPerson(deps, actor, staffId)
  if (await store.end(deps, staffId))
    await noteSecurityEvent(deps, deps.prisma, {
      kind: 'second-step-off',
      staffId: actor.staffId,
      aboutId: staffId,
    })
}

/**
 * Whoever turned it on types a code besides the password: of the app, or a recovery code, each once.
 * @throws SECOND_STEP_NEEDED without a code, SECOND_STEP_REFUSED, SIGN_IN_REFUSED where the shop asks for a second step and theirs
 * is a passkey
 */
export const checkSecondStep = async (
  deps: Deps,
  { staffId, code, address }: { staffId: string; code: string | undefined; address: string },
): Promise<void> => {
  const found = await store.findSecondStep(deps, staffId)
  if (found === null || found.confirmedAt === null) return refuseWhereOnlyPasskey(deps, staffId)
  if (code === undefined || code.trim() === '') throw new AppError({ code: 'SECOND_STEP_NEEDED' })
  const step = await stepOf(deps, staffId, code)
  if (step !== null && (await store.takeStep(deps, staffId, step))) return
  if (!(await store.takeRecoveryCode(deps, staffId, tokenDigest(plainCode(code)))))
    throw new AppError({ code: 'SECOND_STEP_REFUSED' })
  await noteSecurityEvent(deps, deps.prisma, { kind: 'recovery-code-used', staffId, address })
}

/** A password must not open the way to a new second step where there is one. */
const refuseWhereOnlyPasskey = async (deps: Deps, staffId: string): Promise<void> => {
  const { secondStep } = await findAccessRules(deps.prisma, deps.shopId)
  if (secondStep && (await listPasskeys(deps, staffId)).length > 0)
    throw new AppError({ code: 'SIGN_IN_REFUSED', why: 'passkey-needed' })
}

/** Whether a person who typed a password has to turn a second step on, since the shop asks everybody for one. */
export const secondStepAwaited = async (deps: Deps, staffId: string): Promise<Awaited | null> => {
  const { secondStep } = await findAccessRules(deps.prisma, deps.shopId)
  if (!secondStep) return null
  const found = await store.findSecondStep(deps, staffId)
  return found === null || found.confirmedAt === null ? 'second-step' : null
}

/** The step of which a code of a person's app is; `null`: of none, or the key to which their secret is sealed is lost. */
const stepOf = async (deps: Deps, staffId: string, code: string): Promise<number | null> => {
  const found = await store.findSecondStep(deps, staffId)
  const secret = found === null ? null : await deps.sealing.open(found.secretBox)
  return secret === null
    ? null
    : stepOfCode(Buffer.from(secret, 'base64'), code.replace(/\s/g, ''), deps.clock.now())
}
