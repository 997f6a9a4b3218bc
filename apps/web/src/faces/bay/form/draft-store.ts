import { useSyncExternalStore } from 'react'
import { keepForm, loadForms } from '../../../ledger/half-filled-forms.ts'

/**
 * What is half filled in on this tablet, by step. It lives outside every screen: locking, changing the person,
 * looking at another wheel, a failed sending or a reload lose none of it.
 */
const drafts = new Map<string, unknown>()
const listeners = new Set<() => void>()

/** All of them, as of the last change. */
let filled: ReadonlyMap<string, unknown> = new Map()

const tell = () => {
  filled = new Map(drafts)
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

/** The newest change of each key, until the tablet keeps it. */
const keeping = new Map<string, Promise<boolean>>()

/** Whether everything that is half filled in would survive a reload. */
export const draftsKept = async (): Promise<boolean> =>
  (await Promise.all(keeping.values())).every((isKept) => isKept)

const change = (key: string, draft: unknown): void => {
  if (draft === undefined) drafts.delete(key)
  else drafts.set(key, draft)
  tell()
  // A tablet without room keeps it until the page is closed.
  const isKept = keepForm(key, draft).then(
    () => true,
    () => draft === undefined,
  )
  keeping.set(key, isKept)
  void isKept.then((kept) => {
    if (kept && keeping.get(key) === isKept) keeping.delete(key)
  })
}

/** Fills a form in from outside its screen. */
export const keepDraft = <T>(key: string, draft: T): void => change(key, draft)

/** What is half filled in on this tablet, by the form's key. */
export const useFilledForms = (): ReadonlyMap<string, unknown> =>
  useSyncExternalStore(subscribe, () => filled)

/** The draft under a key; `blank` until something is typed. A key is always used with the same type. */
export const useDraft = <T>(key: string, blank: T): DraftHandle<T> => {
  const kept = useSyncExternalStore(subscribe, () => drafts.get(key)) as T | undefined
  return {
    draft: kept ?? blank,
    change: (draft) => keepDraft(key, draft),
    discard: () => change(key, undefined),
  }
}
