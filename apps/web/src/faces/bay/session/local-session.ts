import { getSession, type Session } from '@bayledger/contract/sessions'
import { call } from '../../../lib/api-client.ts'
import { isCallProblem } from '../../../lib/problem.ts'
import { lockTablet } from './lock-store.ts'

/** A session that the tablet gave because the server was out of reach; `pinVersion`: of the PIN that was checked here. */
export type LocalSession = { readonly session: Session; readonly pinVersion: number }

let local: LocalSession | null = null
let goOn: () => void = () => undefined

export const beginLocalSession = (begun: LocalSession): void => {
  local = begun
}

export const endLocalSession = (): void => {
  local = null
}

export const localSession = (): LocalSession | null => local

/** Sets what asks the server to go on with a local session. */
export const goOnWith = (asks: () => void): void => {
  goOn = asks
}

/** The server has answered: where the tablet itself let the person in, it is asked to go on with them. */
export const serverAnswered = (): void => {
  if (local !== null) goOn()
}

let isLooking = false

/**
 * The server took a call for one without a session. Where the tablet itself gave one, the server is asked to go on with it and
 * nobody types a PIN again. Otherwise the tablet locks, and what is half typed stays behind; but not for a call that went out
 * before the server went on with the person who is here: the server is asked once more.
 */
export const sessionLost = (): void => {
  if (local !== null) goOn()
  else if (!isLooking) void lockIfOver()
}

const lockIfOver = async (): Promise<void> => {
  isLooking = true
  const isOver = await isSessionOver()
  isLooking = false
  if (isOver && local === null) lockTablet()
}

const isSessionOver = (): Promise<boolean> =>
  call(getSession, {}).then(
    () => false,
    (thrown) => isCallProblem(thrown, 'SESSION_MISSING') || isCallProblem(thrown, 'SESSION_EXPIRED'),
  )
