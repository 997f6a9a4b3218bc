import { live, type Wake } from '@bayledger/contract/live'
import { type QueryClient, useQueryClient } from '@tanstack/react-query'
import { useEffect } from 'react'
import { gatherWakes } from './gather-wakes.ts'
import { catchUpOrder, heldSeq } from './order-query.ts'

/**
 * Listens for wake-ups and reads what moved: of each order that is held here the entries after its last one, and its
 * row of the floor list (`readFloorRows`). After a gap everything shown is read again, so nothing can be missed.
 * Nothing is read while `isSeen` is false: behind a locked door the session is over or about to be another person's.
 * One browser, one connection: the tab that holds the lock listens and passes wake-ups on to the others.
 */
export const useLiveUpdates = (
  readFloorRows: (client: QueryClient, orderIds: readonly string[]) => Promise<void>,
  isSeen = true,
): void => {
  const client = useQueryClient()
  useEffect(() => {
    if (!isSeen) return
    const channel = new BroadcastChannel('bayledger.live')
    const stop = new AbortController()
    const gathered = gatherWakes((wake) => readWhatMoved(client, wake, readFloorRows))
    channel.onmessage = ({ data }: MessageEvent<Wake>) => gathered.add(data)
    void client.invalidateQueries({ queryKey: ['floor'] })
    void client.invalidateQueries({ queryKey: ['orders'] })
    const listen = () =>
      new Promise<void>((resolve) => {
        let source: EventSource
        let again: ReturnType<typeof setTimeout> | undefined
        const open = () => {
          source = new EventSource(live.path)
          source.addEventListener('wake', ({ data }: MessageEvent<string>) => {
            const wake = JSON.parse(data) as Wake
            gathered.add(wake)
            channel.postMessage(wake)
          })
          // A lost connection comes back by itself; one that something else than the server answered does not.
          source.addEventListener('error', () => {
            if (source.readyState === EventSource.CLOSED) again = setTimeout(open, listenAgainMilliseconds)
          })
        }
        open()
        stop.signal.addEventListener('abort', () => {
          clearTimeout(again)
          source.close()
          resolve()
        })
      })
    navigator.locks?.request('bayledger.live', { signal: stop.signal }, listen).catch(() => undefined)
    return () => {
      stop.abort()
      gathered.stop()
      channel.close()
    }
  }, [client, isSeen, readFloorRows])
}

const listenAgainMilliseconds = 3_000

const readWhatMoved = async (
  client: QueryClient,
  { all, orders, tray }: Wake,
  readFloorRows: (client: QueryClient, orderIds: readonly string[]) => Promise<void>,
): Promise<void> => {
  if (all) {
    await client.invalidateQueries({ queryKey: ['floor'] })
    await client.invalidateQueries({ queryKey: ['orders'] })
    return
  }
  const isHeld = (orderId: string) => client.getQueryCache().find({ queryKey: ['orders', orderId] })
  // Whoever wrote an entry has usually read it by the time its wake-up comes.
  const moved = orders.filter(({ orderId, seq }) => isHeld(orderId) && heldSeq(client, orderId) < seq)
  await Promise.all([
    ...moved.map(({ orderId }) => catchUpOrder(client, orderId)),
    readFloorRows(
      client,
      orders.map(({ orderId }) => orderId),
    ).catch(() => client.invalidateQueries({ queryKey: ['floor'] })),
    ...(tray ? [client.invalidateQueries({ queryKey: ['orders', 'refused'] })] : []),
  ])
}
