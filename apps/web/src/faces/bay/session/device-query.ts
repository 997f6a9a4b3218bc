import { getDevice } from '@bayledger/contract/devices'
import { queryOptions } from '@tanstack/react-query'
import { call } from '../../../lib/api-client.ts'
import { isOutOfReach } from '../../../lib/out-of-reach.ts'
import { isCallProblem } from '../../../lib/problem.ts'
import { hearServerTime } from '../../../lib/server-clock.ts'
import { contactMade, keptDevice, tabletPutOut } from './tablet-contact.ts'

/** How often a tablet asks whether it may still open what it keeps. */
const contactMilliseconds = 60_000

/**
 * Which tablet this is, as the server says it or, out of its reach, as it said it last. `DEVICE_UNKNOWN` if it was never
 * enrolled or was put out, `TABLET_SHUT` if it has been out of reach for too long.
 */
export const deviceQuery = queryOptions({
  queryKey: ['device'],
  queryFn: async ({ signal }) => {
    const askedAt = Date.now()
    try {
      const device = await call(getDevice, { signal })
      hearServerTime(device.now, askedAt, Date.now())
      await contactMade(device)
      // The next contact says it again where this one does not get through.
      import('./tell-unsent.ts').then(({ tellUnsent }) => tellUnsent()).catch(() => undefined)
      return device
    } catch (thrown) {
      if (isCallProblem(thrown, 'DEVICE_UNKNOWN')) await tabletPutOut()
      const kept = isOutOfReach(thrown) && !signal.aborted ? await keptDevice() : null
      if (kept === null) throw thrown
      return kept
    }
  },
  staleTime: Number.POSITIVE_INFINITY,
  refetchInterval: contactMilliseconds,
  // After a sleep the server's time is asked for at once: a watch is corrected by it.
  refetchOnWindowFocus: 'always',
  retry: false,
})
