import type { Timed } from '@bayledger/ledger/timed'
import { useSyncExternalStore } from 'react'
import * as z from 'zod/mini'
import { serverAheadMs } from '../../../lib/server-clock.ts'
import { secondsOf, startWatch, stopWatch, type TabletClock, timedBy, Watch } from './watch.ts'

const tabletClock: TabletClock = {
  ofTheDay: () => Date.now(),
  steady: () => performance.now(),
  pageOpenedAt: performance.timeOrigin,
  serverAheadMs,
}

const prefix = 'bayledger.watch.'
const listeners = new Set<() => void>()
/** The same object as long as the text is the same, as the screens compare them. */
const read = new Map<string, { readonly text: string; readonly watch: Watch | null }>()

const watchUnder = (key: string): Watch | null => {
  const text = localStorage.getItem(prefix + key)
  if (text === null) return null
  const known = read.get(key)
  if (known?.text === text) return known.watch
  const parsed = z.safeParse(Watch, JSON.parse(text))
  const watch = parsed.success ? parsed.data : null
  read.set(key, { text, watch })
  return watch
}

const keep = (key: string, watch: Watch | null) => {
  if (watch === null) localStorage.removeItem(prefix + key)
  else localStorage.setItem(prefix + key, JSON.stringify(watch))
  for (const listener of listeners) listener()
}

const subscribe = (listener: () => void) => {
  listeners.add(listener)
  return () => {
    listeners.delete(listener)
  }
}

export type WatchHandle = {
  readonly watch: Watch | null
  /** Seconds that it has run, now; `null` before it is started. */
  readonly passed: (() => number) | null
  readonly start: (kept?: Watch['kept']) => void
  /** Stops it, if it runs, and gives what an entry says of it. A retried entry says the same again. */
  readonly stop: () => Timed
  /** It was stopped by mistake and has run all the time. */
  readonly goOn: () => void
  readonly discard: () => void
}

/**
 * A watch under a key, kept in the tablet's own storage: it goes on while the tablet is locked, shows another order, or is
 * reloaded. A key names the entry before, so that a recorded watch is never used twice and a refused one is still there.
 */
export const useWatch = (key: string): WatchHandle => {
  const watch = useSyncExternalStore(subscribe, () => watchUnder(key))
  return {
    watch,
    passed: watch && (() => secondsOf(watch, tabletClock)),
    start: (kept) => keep(key, startWatch(tabletClock, kept)),
    stop: () => {
      const running = watchUnder(key)
      if (running) keep(key, stopWatch(running, tabletClock))
      return timedBy(watchUnder(key), tabletClock)
    },
    goOn: () => {
      const stopped = watchUnder(key)
      if (!stopped) return
      const { across, ...rest } = stopped
      keep(key, { ...rest, stoppedAfter: null })
    },
    discard: () => keep(key, null),
  }
}

const oldMilliseconds = 14 * 24 * 3_600_000

/** Forgets watches that were begun two weeks ago: their orders are long gone. */
export const forgetOldWatches = (): void => {
  for (const name of Object.keys(localStorage)) {
    const watch = name.startsWith(prefix) ? watchUnder(name.slice(prefix.length)) : null
    if (watch && Date.now() - watch.startedAt > oldMilliseconds) localStorage.removeItem(name)
  }
}
