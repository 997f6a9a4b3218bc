import type { Session } from '@bayledger/contract/sessions'
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

/**
 * The server knows no session here. Where the tablet itself gave one, the server is asked to go on with it and nobody types a
 * PIN again; otherwise the tablet locks, and what is half typed stays behind.
 */
export const sessionLost = (): void => {
  if (local === null) lockTablet()
  else goOn()
}
