import { useSyncExternalStore } from 'react'

/**
 * What is half filled in on this tablet, by step. It lives outside every screen: locking, changing the person,
 * looking at another wheel or a failed sending lose none of it.
 */
const drafts = new Map<string, unknown>()
const listeners = new Set<() => void>()

const tell = () => {
  for (const listener of listeners) listener()
}

const subscribe = (listener: () => void) => {
  listeners.add(listener)
  return () => {
    listeners.delete(listener)
  }
}

export type DraftHandle<T> = {
  readonly draft: T
  readonly change: (draft: T) => void
  readonly discard: () => void
}

/** Fills a form in from outside its screen. */
export const keepDraft = <T>(key: string, draft: T): void => {
  drafts.set(key, draft)
  tell()
}

/** The draft under a key; `blank` until something is typed. A key is always used with the same type. */
export const useDraft = <T>(key: string, blank: T): DraftHandle<T> => {
  const kept = useSyncExternalStore(subscribe, () => drafts.get(key)) as T | undefined
  return {
    draft: kept ?? blank,
    change: (draft) => keepDraft(key, draft),
    discard: () => {
      drafts.delete(key)
      tell()
    },
  }
}
