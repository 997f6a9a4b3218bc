import { ruleSetVersion } from '@bayledger/reckoning/diagnosis/diagnose'
import { admit } from '../admit.ts'
import type { Draft } from '../entry.ts'
import type { Foldable } from '../fold/foldable.ts'
import { fold } from '../fold.ts'
import type { Hold } from '../hold.ts'
import type { OrderState } from '../state.ts'
import { isIssuedOn } from '../subjects/findings/rules.ts'
import type { AdmitFacts, PartOnStock } from './facts.ts'
import { holdsFor } from './holds.ts'
import type { Refusal, Verdict } from './refusal.ts'

/** What the writer of an entry could know: the order as their device had it, and whether it was out of reach since. */
export type Heard = { readonly state: () => OrderState; readonly waited: boolean }

/**
 * What the writer of a draft could know of an order of these entries. Their device had read the first `seq` of them, and
 * knows what it wrote itself. `null`: everything.
 */
export const heardOf = (
  entries: readonly Foldable[],
  { deviceId }: Draft,
  { seq, waited }: { readonly seq: number; readonly waited: boolean },
): Heard | null => {
  if (seq >= entries.length && !waited) return null
  const known = entries.filter(
    (entry) => entry.seq <= seq || (deviceId !== null && entry.deviceId === deviceId),
  )
  return known.length === 0 ? null : { state: () => fold(known), waited }
}

/**
 * Whether an entry may follow what the order holds, where its writer may not have heard of all of it. What is refused only
 * for what they could not know is a true fact all the same: it is admitted, and a hold keeps a gate shut until a person has
 * settled it. `heard: null`: the writer had heard everything.
 */
export const admitHeard = (
  now: OrderState,
  draft: Draft,
  facts: AdmitFacts,
  heard: Heard | null,
): Verdict => {
  const verdict = admit(now, draft, facts)
  if (verdict.admitted || final.has(verdict.code)) return verdict
  const isTrue =
    draft.kind === 'diagnosis.issued' && verdict.code === 'DIAGNOSIS_DIFFERS'
      ? followedThen(heard?.state() ?? now, draft.payload, heard !== null)
      : heard !== null && admit(heard.state(), draft, factsThen(facts, draft, heard)).admitted
  return isTrue
    ? { admitted: true, holds: [...holdsFor(now, draft, facts), ...heldFor(draft, verdict)] }
    : verdict
}

/** Late entries of an order that is sealed or over go to the tray; an id that is taken is taken. */
const final: ReadonlySet<Refusal['code']> = new Set(['ORDER_SEALED', 'ORDER_ENDED', 'ENTRY_ID_REUSED'])

/** Findings that followed from what was known. By an older rule set they cannot be computed again; both are outdated. */
const followedThen = (
  then: OrderState,
  payload: Extract<Draft, { kind: 'diagnosis.issued' }>['payload'],
  wasUnheard: boolean,
): boolean =>
  Number(payload.diagnosis.ruleSet) < Number(ruleSetVersion)
    ? isIssuedOn(then, payload, 'older-rules')
    : wasUnheard && isIssuedOn(then, payload, 'these-rules')

/**
 * The facts as their writer could know them. A tablet does not know the sensors of other vehicles. While it is out of reach
 * it does not hear that a gauge is in quarantine or a part is held back, and its own clock says which day it is.
 */
const factsThen = (facts: AdmitFacts, draft: Draft, { waited }: Heard): AdmitFacts => ({
  ...facts,
  idsOnOtherVehicles: new Set(),
  ...(waited
    ? {
        now: earlierOf(draft.writtenAt, facts.now),
        gauges: new Set([...facts.gauges, ...facts.gaugesInQuarantine]),
        stock: new Map([...facts.stock].map(([number, part]) => [number, notHeldBack(part)])),
      }
    : {}),
})

const earlierOf = (one: string, other: string): string => (one < other ? one : other)

const notHeldBack = (part: PartOnStock): PartOnStock => ({ ...part, heldBack: null })

const heldFor = (draft: Draft, { code }: Refusal): Hold[] =>
  harmless.has(code) || (code === 'STEP_ALREADY_CLOSED' && readings.has(draft.kind))
    ? []
    : [
        {
          code: 'heard-late',
          gate: secures.has(draft.kind) && code !== 'STEP_ALREADY_CLOSED' ? 'road' : 'seal',
          wheel: 'wheel' in draft.payload ? (draft.payload.wheel ?? null) : null,
          values: { refusal: code },
        },
      ]

/** What needs nobody to look: a proof was good when it was used, and what is withdrawn twice is withdrawn. */
const harmless: ReadonlySet<Refusal['code']> = new Set([
  'DIAGNOSIS_NOT_CURRENT',
  'SECOND_PERSON_UNPROVEN',
  'STRIKE_ALREADY_STRUCK',
])

/** Two readings of one thing are compared with one another: where they differ, the order says so by itself. */
const readings: ReadonlySet<Draft['kind']> = new Set([
  'wheel.checked',
  'tire.inspected',
  'module.read',
  'telltale.observed',
])

/** What makes a wheel fit for the road. */
const secures: ReadonlySet<Draft['kind']> = new Set(['wheel.mounted', 'studs.torqued', 'torque.checked'])
