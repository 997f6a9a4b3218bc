import type { FastenerDamage, TireDamage, WheelEvidence } from '@bayledger/reckoning/evidence/evidence'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { FoundKind, OrderState } from '../state.ts'
import { holesAt } from './puncture.ts'

/** What was found wrong at a wheel during the work, in the order found. */
export const foundAt = ({ troubles }: OrderState, wheel: WheelPosition): FoundKind[] =>
  troubles.flatMap((trouble) => (trouble.wheel === wheel ? [trouble.what] : []))

/**
 * A wheel's evidence with what was found at it since: the findings are raised again from it, whatever the arrival check
 * saw. A cut that a person reports at a step counts as one to the cord.
 */
export const withFound = (evidence: WheelEvidence, found: readonly FoundKind[]): WheelEvidence =>
  found.length === 0
    ? evidence
    : {
        ...evidence,
        ...(found.includes('silent') ? silent(evidence) : {}),
        ...insideDamage(found),
        tireDamage: merged(evidence.tireDamage, found, tireDamageOf),
        fastenerDamage: merged(evidence.fastenerDamage, found, fastenerDamageOf),
      }

/** A tire that comes apart inside, or was run low; cord counts as showing wherever it is seen. */
const insideDamage = (found: readonly FoundKind[]): Partial<WheelEvidence> => {
  if (found.includes('run-low-inside')) return { insideTire: 'run-low-damage' }
  return found.includes('separation') ? { insideTire: 'separation' } : {}
}

/** The holes of a tire as the last look recorded them, from inside if somebody has looked there. */
export const holesIn = (state: OrderState, wheel: WheelPosition): Pick<WheelEvidence, 'punctures'> => {
  const holes = holesAt(state, wheel) ?? []
  return holes.length === 0
    ? {}
    : {
        punctures: holes.map(({ place, millimeters, overlapsRepair, fromOthers }) => ({
          place,
          millimeters,
          overlapsRepair: either(overlapsRepair, fromOthers?.unitsOverlap),
        })),
      }
}

/** For the findings, the unit of another hole is a repair like an earlier one. */
const either = (earlier: boolean | null, other: boolean | null | undefined): boolean | null =>
  earlier === true || other === true ? true : other === null ? null : earlier

const tireDamageOf: Readonly<Partial<Record<FoundKind, TireDamage>>> = {
  cut: 'cut-to-cord',
  cord: 'cord-showing',
  bulge: 'bulge',
}

const fastenerDamageOf: Readonly<Partial<Record<FoundKind, FastenerDamage>>> = {
  stud: 'stud-broken',
  seat: 'seat-wrong',
  thread: 'thread-stripped',
}

const merged = <Damage>(
  before: readonly Damage[] | null | undefined,
  found: readonly FoundKind[],
  damageOf: Readonly<Partial<Record<FoundKind, Damage>>>,
): Damage[] | null => {
  const more = found.flatMap((what) => damageOf[what] ?? [])
  return more.length === 0 && !before ? null : [...new Set([...(before ?? []), ...more])]
}

/** A silent sensor sends nothing: what an earlier try read of it no longer counts. It takes two tries to be silent. */
const silent = ({ tries }: WheelEvidence): Partial<WheelEvidence> => ({
  answer: 'silent',
  tries: Math.max(2, tries ?? 0),
  id: null,
  sensorPressure: null,
  sensorTemperature: null,
  battery: null,
  frequencyMHz: null,
  followsPressure: null,
  learnRefusals: null,
})
