import { passwordFault, pinFault } from '@bayledger/ledger/proof-of-person'
import { peopleProblems } from '@bayledger/wording/en/people-problems'

const notAlike = 'The two differ. Type both again.'

/** Why a PIN that was typed twice is not sent; nothing: it is. */
export const whyUnsuitablePin = (typed: string, again: string): string | undefined => {
  const why = pinFault(typed)
  if (why !== null) return peopleProblems.PIN_UNSUITABLE.detail({ why })
  return typed === again ? undefined : notAlike
}

/** Why a password that was typed twice is not sent; nothing: it is. */
export const whyUnsuitablePassword = (typed: string, again: string): string | undefined => {
  const why = passwordFault(typed)
  if (why !== null) return peopleProblems.PASSWORD_UNSUITABLE.detail({ why })
  return typed === again ? undefined : notAlike
}
