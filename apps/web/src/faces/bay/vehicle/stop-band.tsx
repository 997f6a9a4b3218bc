import type { Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import { headlineOf, wordOf } from '../../../features/findings/finding-words.ts'

/** Shows what the readings forbid at once, so that nobody opens such a tire unaware. */
export function StopBand({ stops }: { stops: readonly Finding[] }) {
  if (stops.length === 0) return null
  return (
    <p className="loud-band" role="status">
      {stops.map((stop) => `${wordOf(stop, null)} · ${headlineOf(stop)}`).join(' — ')}
    </p>
  )
}
