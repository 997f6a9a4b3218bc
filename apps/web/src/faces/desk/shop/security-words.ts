import type { SecurityEventLine } from '@bayledger/contract/security-events'
import { type Clock, clockTimeOrDay } from '../../../lib/format.ts'

/** A security event in one sentence, without its time. */
export const securitySentence = (event: SecurityEventLine): string => {
  const who = event.by ?? (event.details.by === 'command' ? 'A command on the machine' : 'Somebody')
  const whom = event.about ?? 'a name that nobody has'
  const where = [
    ...(event.tablet === null ? [] : [` on the tablet ${event.tablet}`]),
    ...(event.address === null ? [] : [` from ${event.address}`]),
  ].join('')
  const times = event.count === 1 ? '' : ` ${event.count} times`
  const { details } = event
  switch (event.kind) {
    case 'signed-in':
      return `${who} signed in${details.by === 'passkey' ? ' with a passkey' : ''}${where}.`
    case 'signed-out':
      return `${who} signed out.`
    case 'sign-in-failed':
      return `A wrong password was typed${times} for ${whom}${where}.`
    case 'pin-failed':
      return `A wrong PIN was typed${times} for ${whom}${where}.`
    case 'password-failed':
      return `${whom}, signed in, typed a wrong password${times}${where}.`
    case 'wait-began':
      return `A wait began${times} after wrong tries for ${whom}${where}.`
    case 'session-ended':
      return `${who} ended ${details.sessions === 1 ? 'a session' : `${details.sessions} sessions`} of ${whom}.`
    case 'proven-again':
      return details.by === 'passkey'
        ? `${who} used a passkey again${where}.`
        : `${who} typed the password again${where}.`
    case 'person-changed':
      return `${who} saved ${whom}: ${rolesOf(details)}.`
    case 'pin-set':
      return `${who} set the PIN of ${whom}.`
    case 'password-set':
      return `${who} set the password of ${whom}.`
    case 'second-step-on':
      return `${who} turned the code at sign-in on.`
    case 'second-step-off':
      return `${who} turned the code at sign-in of ${whom} off.`
    case 'recovery-code-used':
      return `${who} used a recovery code${where}.`
    case 'passkey-added':
      return `${who} added a passkey${where}.`
    case 'passkey-removed':
      return `${who} removed a passkey of ${whom}.`
    case 'passkey-failed':
      return `A passkey was refused${times} for ${event.about ?? 'nobody of this shop'}${where}.`
    case 'passkey-went-back':
      return `A passkey of ${whom} had signed less often than before and was refused${where}: it may be a copy.`
    case 'owner-recovered':
      return `${who} gave ${whom} a new password and removed the code at sign-in and the passkeys.`
    case 'access-rules-changed':
      return `${who} saved the rules of the sign-in: ${details.secondStep === true ? 'everybody at the desk needs a second step' : 'a second step is up to each person'}.`
    case 'owner-code-made':
      return `${who} made a printed code for a new password.`
    case 'owner-code-used':
      return `${who} set a new password with the printed code${where}; the code at sign-in and the passkeys were removed.`
    case 'owner-code-failed':
      return `A wrong printed code was typed${times} for ${whom}${where}.`
    case 'tablet-code-made':
      return `${who} made a code for a tablet.`
    case 'tablet-let-in':
      return `The tablet ${event.about ?? ''} was let in.`
    case 'tablet-changed':
      return `${who} saved the tablet ${event.about ?? ''}.`
    case 'tablet-put-out':
      return `${who} put the tablet ${event.about ?? ''} out.`
    case 'file-exported':
      return `${who} took out the file ${String(details.file)}.`
    case 'data-copied':
      return `${who} copied a customer’s data.`
    case 'person-erased':
      return event.by === null
        ? 'A customer’s data were erased: their time was over.'
        : `${who} erased a customer’s data.`
    case 'link-withdrawn':
      return `${who} withdrew a customer’s link.`
  }
}

const rolesOf = ({ roles, active }: Readonly<Record<string, unknown>>): string =>
  active === false ? 'left the shop' : Array.isArray(roles) ? roles.join(', ') : 'no roles'

/** When it was; from when to when, where several are one line. */
export const securityTime = (
  { count, firstAt, lastAt }: SecurityEventLine,
  now: string,
  clock: Clock,
): string =>
  count === 1 || firstAt === lastAt
    ? clockTimeOrDay(lastAt, now, clock)
    : `${clockTimeOrDay(firstAt, now, clock)} to ${clockTimeOrDay(lastAt, now, clock)}`
