import { signOut } from '@bayledger/contract/sessions'
import { useEffect } from 'react'
import { call } from '../../../lib/api-client.ts'
import { bayOutbox } from '../record/bay-outbox.ts'
import { lockTablet } from './lock-store.ts'

const idleMilliseconds = 90_000

let ending: Promise<void> = Promise.resolve()

/** Resolves when nothing of the session before is on its way: neither an entry nor the end of that session. */
export const sessionEnded = async (): Promise<void> => {
  await ending
  await bayOutbox.drained()
}

/** Locks the tablet after 90 s without a touch or a key; the server forgets the session, the screen keeps its work. */
export const useIdleLock = (isOpen: boolean): void => {
  useEffect(() => {
    if (!isOpen) return
    const lock = () => {
      lockTablet()
      // What was written a moment ago goes out first. Without a network the session ends by its own time; the lock on the
      // screen waits for neither.
      ending = bayOutbox
        .drained()
        .then(() => call(signOut, {}))
        .catch(() => undefined)
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
