import { signOut } from '@bayledger/contract/sessions'
import { useEffect } from 'react'
import { call } from '../../../lib/api-client.ts'
import { lockTablet } from './lock-store.ts'

const idleMilliseconds = 90_000

/** Locks the tablet after 90 s without a touch or a key; the server forgets the session, the screen keeps its work. */
export const useIdleLock = (isOpen: boolean): void => {
  useEffect(() => {
    if (!isOpen) return
    const lock = () => {
      lockTablet()
      // Without a network the session ends by its own time; the lock on the screen does not wait for it.
      void call(signOut, {}).catch(() => undefined)
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
