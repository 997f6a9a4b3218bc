import { canonicalText } from '../digests.ts'
import type { Conflict } from '../state.ts'
import { type Foldable, writtenOf } from './foldable.ts'

type Fact = Pick<Conflict, 'fact' | 'phase' | 'wheel'> & { readonly value: unknown }

/** What devices recorded of each fact so far: the newest record of each device, in the order of recording. */
export type Told = ReadonlyMap<string, readonly { readonly fact: Fact; readonly entry: Foldable }[]>

/** Notes the facts of one more entry. Gives back the same map where the entry records none. */
export const tell = (told: Told, entry: Foldable): Told => {
  const facts = factsOf(entry)
  if (facts.length === 0) return told
  const next = new Map(told)
  for (const fact of facts) {
    const key = `${fact.phase}/${fact.wheel ?? 'vehicle'}/${fact.fact}`
    const others = (next.get(key) ?? []).filter((one) => one.entry.deviceId !== entry.deviceId)
    next.set(key, [...others, { fact, entry }])
  }
  return next
}

/**
 * Facts that two devices recorded, each without knowing of the other. Both are kept, and the later one counts until a
 * person withdraws one. A device that reads again corrects itself; that is no conflict.
 */
export const conflictsIn = (told: Told): Conflict[] =>
  [...told.values()].flatMap((records): Conflict[] => {
    const [first] = records
    if (!first || records.length < 2) return []
    const { fact, phase, wheel } = first.fact
    const values = new Set(records.map((record) => canonicalText(record.fact.value)))
    return [
      { fact, phase, wheel, agree: values.size === 1, records: records.map(({ entry }) => writtenOf(entry)) },
    ]
  })

const factsOf = (entry: Foldable): Fact[] => {
  switch (entry.kind) {
    case 'wheel.checked': {
      const { phase, wheel, gauge, sensor } = entry.payload
      return [
        ...(gauge ? [{ fact: 'gauge' as const, phase, wheel, value: gauge.pressure }] : []),
        ...(sensor && sensor.answer !== 'not-tried'
          ? [{ fact: 'sensor' as const, phase, wheel, value: heard(sensor) }]
          : []),
      ]
    }
    case 'tire.inspected': {
      const { when, wheel, stepKey: _step, ...seen } = entry.payload
      return when === 'arrival'
        ? tireFacts.flatMap(([fact, member]): Fact[] =>
            (seen[member] ?? null) === null ? [] : [{ fact, phase: 'arrival', wheel, value: seen[member] }],
          )
        : []
    }
    case 'module.read': {
      const { phase, state, ids, codes } = entry.payload
      return [{ fact: 'control-module', phase, wheel: null, value: { state, ids, codes } }]
    }
    case 'telltale.observed': {
      const { phase, behavior } = entry.payload
      return behavior === null ? [] : [{ fact: 'warning-light', phase, wheel: null, value: behavior }]
    }
    default:
      return []
  }
}

/** What identifies a sensor. The number of tries, and values that drift from minute to minute, are no disagreement. */
const heard = (sensor: { readonly answer: string; readonly id?: string | null }): unknown => ({
  answer: sensor.answer,
  id: sensor.id ?? null,
})

const tireFacts = [
  ['stem', 'stem'],
  ['valve', 'valve'],
  ['tread', 'treadDepth32nds'],
  ['tire-size', 'sizeSeen'],
  ['date-code', 'dateCodeSeen'],
  ['tire-damage', 'tireDamage'],
  ['fastener-damage', 'fastenerDamage'],
] as const
