import { passwordFault, pinFault } from '@bayledger/ledger/proof-of-person'
import { AppError } from './app-error.ts'
import { isOftenUsed } from './often-used-passwords.ts'

/** @throws PIN_UNSUITABLE */
export const refuseEasyPin = (pin: string): void => {
  const why = pinFault(pin)
  if (why !== null) throw new AppError({ code: 'PIN_UNSUITABLE', why })
}

/** @throws PASSWORD_UNSUITABLE */
export const refuseEasyPassword = async (password: string): Promise<void> => {
  const why = passwordFault(password) ?? ((await isOftenUsed(password)) ? 'often-used' : null)
  if (why !== null) throw new AppError({ code: 'PASSWORD_UNSUITABLE', why })
}
