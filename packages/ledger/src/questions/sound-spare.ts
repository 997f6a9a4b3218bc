import type { FindingCode } from '@bayledger/reckoning/diagnosis/diagnosis'
import { roadPositions } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../state.ts'
import { spareWheel } from './spare-on.ts'
import { openTroubles } from './troubles.ts'

/** Why the vehicle cannot leave on its spare. */
export type NoSoundSpare = 'none' | 'not-checked' | 'damaged' | 'no-help' | 'one-spare'

/** Dangers that a sound wheel in the same place takes away. */
const ofTheTire: ReadonlySet<string> = new Set<FindingCode>([
  'tire-unsafe',
  'run-low-damage-possible',
  'puncture-found',
  'puncture-not-repairable',
  'stem-leaking',
])

/** Why the spare does not help against these findings; `null` if it is sound and takes the place of one wheel. */
export const noSoundSpare = (state: OrderState, codes: readonly string[]): NoSoundSpare | null => {
  const findings = (state.diagnosis?.diagnosis.findings ?? []).filter(({ code }) => codes.includes(code))
  const used = spareWheel(state)
  const named = new Set(findings.flatMap((finding) => finding.wheels))
  const wheels = roadPositions.filter((wheel) => named.has(wheel) || wheel === used)
  if (!codes.every((code) => ofTheTire.has(code)) || wheels.length === 0) return 'no-help'
  if (wheels.length > 1) return 'one-spare'
  if (state.sheet?.sheet.spare === 'none') return 'none'
  const damage = state.arrival.tires.SP?.tireDamage ?? null
  if (damage === null || !state.arrival.wheels.SP?.gauge) return 'not-checked'
  const isUnsafe =
    damage.length > 0 ||
    openTroubles(state).some(({ wheel }) => wheel === 'SP') ||
    (state.diagnosis?.diagnosis.findings ?? []).some(
      ({ code, wheels: where }) => code === 'tire-unsafe' && where.includes('SP'),
    )
  return isUnsafe ? 'damaged' : null
}
