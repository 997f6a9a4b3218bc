import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import type { Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { Evidence, VehicleEvidence, WheelEvidence } from '@bayledger/reckoning/evidence/evidence'

/** What is found on a left front tire of which this was seen. Pressures in psi, temperatures in °F. */
export const foundOnTire = (
  seen: WheelEvidence,
  vehicle: VehicleEvidence = {},
  rest: Partial<Evidence> = {},
): readonly Finding[] =>
  diagnose({
    units: { pressure: 'psi', temperature: 'F', altitude: 'ft' },
    vehicle: { system: 'direct', placard: { front: 35, rear: 35, verified: true }, ...vehicle },
    wheels: { LF: seen },
    ...rest,
  }).findings

type Puncture = NonNullable<WheelEvidence['punctures']>[number]

/** Whether the diagnosis lets a tire with this hole be repaired, or calls for another tire. */
export const punctureVerdict = (
  puncture: Puncture,
  seen: WheelEvidence = {},
): 'may be repaired' | 'replace' => {
  const found = foundOnTire({ tireDamage: ['puncture'], punctures: [puncture], ...seen })
  const stop = found.find(({ code }) => code === 'puncture-not-repairable')
  if (stop === undefined && found.some(({ code }) => code === 'puncture-found')) return 'may be repaired'
  if (stop?.stop === 'repair-before-release' && stop.offers.join() === 'tire') return 'replace'
  throw new Error('a puncture is neither let through nor stopped')
}
