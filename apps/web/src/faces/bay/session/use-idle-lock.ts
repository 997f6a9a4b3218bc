import { signOut } from '@bayledger/contract/sessions'
import { useEffect } from 'react'
import { call } from '../../../lib/api-client.ts'
import { endLocalSession } from './local-session.ts'
import { lockTablet } from './lock-store.ts'

const idleMilliseconds = 90_000

let ending = new AbortController()

/** A sign-in ends the session before by itself: its own end must not come after, and take the new session with it. */
export const leaveSessionToSignIn = (): void => ending.abort()

/** Locks the tablet after 90 s without a touch or a key; the server forgets the session, the screen keeps its work. */
export const useIdleLock = (isOpen: boolean): void => {
  useEffect(() => {
    if (!isOpen) return
    const lock = () => {
      lockTablet()
      endLocalSession()
      // Without a network the session ends by its own time, or with the next sign-in.
      ending = new AbortController()
      call(signOut, { signal: ending.signal }).catch(() => undefined)
    }
    let timer = setTimeout(lock, idleMilliseconds)
    const touched = () => {
      clearTimeout(timer)
      timer = setTimeout(lock, idleMilliseconds)
    }
    const kinds = ['pointerdown', 'keydown', 'wheel'] as const
    for (const kind of kinds) document.addEventListener(kind, touched, true)
    return () => {
      clearTimeout(timer)
      for (const kind of kinds) document.removeEventListener(kind, touched, true)
    }
  }, [isOpen])
}
