import { useSyncExternalStore } from 'react'
import { keepForm, loadForms } from '../../../ledger/half-filled-forms.ts'

/**
 * What is half filled in on this tablet, by step. It lives outside every screen: locking, changing the person,
 * looking at another wheel, a failed sending or a reload lose none of it.
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

/** Brings back what was half filled in before the page was loaded; what was typed since stays. */
export const restoreDrafts = async (): Promise<void> => {
  for (const [key, draft] of await loadForms()) if (!drafts.has(key)) drafts.set(key, draft)
  tell()
}

const change = (key: string, draft: unknown): void => {
  if (draft === undefined) drafts.delete(key)
  else drafts.set(key, draft)
  tell()
  // A tablet without room keeps it until the page is closed.
  keepForm(key, draft).catch(() => undefined)
}

/** Fills a form in from outside its screen. */
export const keepDraft = <T>(key: string, draft: T): void => change(key, draft)

/** The draft under a key; `blank` until something is typed. A key is always used with the same type. */
export const useDraft = <T>(key: string, blank: T): DraftHandle<T> => {
  const kept = useSyncExternalStore(subscribe, () => drafts.get(key)) as T | undefined
  return {
    draft: kept ?? blank,
    change: (draft) => keepDraft(key, draft),
    discard: () => change(key, undefined),
  }
}
