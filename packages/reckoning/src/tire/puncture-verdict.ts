import { punctureLimits } from './puncture-limits.ts'
import { wearBar } from './tread-limits.ts'

export type PuncturePlace = 'crown' | 'shoulder' | 'sidewall'

/** One hole as it was looked at; `null`: nobody has looked. */
export type SeenPuncture = {
  readonly place: PuncturePlace | null
  /** Width in millimeters, the object being out. */
  readonly millimeters: number | null
  readonly overlapsRepair: boolean | null
  /** Whether its repair unit would overlap that of a hole named before it; absent: nobody has looked. */
  readonly overlapsOther?: boolean | null
}

/** What is known of a punctured tire; `null` is "not checked". */
export type PuncturedTire = {
  readonly punctures: readonly SeenPuncture[]
  readonly treadDepth32nds: number | null
  readonly isSoundInside: boolean | null
}

export type RepairDoubt = 'place' | 'width' | 'overlap' | 'between' | 'inside' | 'tread'

/** `not-repairable` names what rules a repair out; `unknown` names what must be looked at first. */
export type PunctureVerdict =
  | { readonly verdict: 'repairable' }
  | { readonly verdict: 'not-repairable'; readonly because: readonly RepairDoubt[] }
  | { readonly verdict: 'unknown'; readonly because: readonly RepairDoubt[] }

/**
 * Whether the holes of a tire may be repaired, by plug and patch together from inside. A fact that is known to be outside
 * the limits decides at once; otherwise every fact must be known.
 *
 * @units Millimeters; 32nds of an inch of tread.
 * @limits The tire maker's own rules govern, above all for tires that run flat or carry sealant.
 * @source The tire trade association's puncture repair procedure, from memory: crown only, at most 6 mm (1/4 in), no
 * overlap with another repair, be it an earlier one or that of a second hole, sound inside, more than 2/32 in of tread.
 */
export const judgePuncture = ({
  punctures,
  treadDepth32nds,
  isSoundInside,
}: PuncturedTire): PunctureVerdict => {
  const known: readonly (readonly [RepairDoubt, boolean | null])[] = [
    ...punctures.flatMap(({ place, millimeters, overlapsRepair }) => [
      ['place', place === null ? null : place === 'crown'] as const,
      ['width', millimeters === null ? null : millimeters <= punctureLimits.widestMillimeters] as const,
      ['overlap', overlapsRepair === null ? null : !overlapsRepair] as const,
    ]),
    ...punctures
      .slice(1)
      .map(
        ({ overlapsOther = null }) => ['between', overlapsOther === null ? null : !overlapsOther] as const,
      ),
    ['inside', isSoundInside],
    ['tread', treadDepth32nds === null ? null : treadDepth32nds > wearBar.value],
  ]
  const which = (value: boolean | null): RepairDoubt[] => [
    ...new Set(known.flatMap(([doubt, isWithin]) => (isWithin === value ? [doubt] : []))),
  ]
  const outside = which(false)
  if (outside.length > 0) return { verdict: 'not-repairable', because: outside }
  const unknown = which(null)
  return unknown.length > 0 ? { verdict: 'unknown', because: unknown } : { verdict: 'repairable' }
}
