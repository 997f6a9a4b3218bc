import { live } from '@bayledger/contract/live'
import { useQueryClient } from '@tanstack/react-query'
import { useEffect } from 'react'

/**
 * Listens for wake-ups and reads again what is shown. A wake-up never carries data; after a gap everything shown
 * is read anew, so nothing can be missed. Nothing is read while `isSeen` is false: behind a locked door the session
 * is over or about to be another person's. One browser, one connection: the tab that holds the lock listens and
 * tells the others.
 */
export const useLiveUpdates = (isSeen = true): void => {
  const client = useQueryClient()
  useEffect(() => {
    if (!isSeen) return
    const channel = new BroadcastChannel('bayledger.live')
    const stop = new AbortController()
    const wake = () => {
      void client.invalidateQueries({ queryKey: ['floor'] })
      void client.invalidateQueries({ queryKey: ['orders'] })
    }
    channel.onmessage = wake
    wake()
    const listen = () =>
      new Promise<void>((resolve) => {
        const source = new EventSource(live.path)
        const tell = () => {
          wake()
          channel.postMessage('wake')
        }
        source.addEventListener('wake', tell)
        source.addEventListener('open', tell)
        stop.signal.addEventListener('abort', () => {
          source.close()
          resolve()
        })
      })
    navigator.locks?.request('bayledger.live', { signal: stop.signal }, listen).catch(() => undefined)
    return () => {
      stop.abort()
      channel.close()
    }
  }, [client, isSeen])
}
