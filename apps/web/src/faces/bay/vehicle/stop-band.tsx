import type { Diagnosis } from '@bayledger/reckoning/diagnosis/diagnosis'
import { findingTitle, severityWordOf } from '../findings/finding-words.ts'

/** What the readings so far forbid, said before anyone has finished reading: nobody opens such a tire unaware. */
export function StopBand({ diagnosis }: { diagnosis: Diagnosis | null }) {
  const stops = (diagnosis?.findings ?? []).filter(({ kind }) => kind === 'stop')
  if (stops.length === 0) return null
  return (
    <p className="loud-band" role="status">
      {stops.map((stop) => `${severityWordOf(stop) ?? 'Stop'} · ${findingTitle(stop)}`).join(' — ')}
    </p>
  )
}
