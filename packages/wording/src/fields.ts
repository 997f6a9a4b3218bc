import type { VehicleField, WheelField } from '@bayledger/reckoning/diagnosis/checks/checked-fields'
import { EventKind } from '@bayledger/reckoning/evidence/evidence-schema'
import { WheelPosition } from '@bayledger/reckoning/wheels'
import { capitalized } from './capitalized.ts'
import type { WheelsWording } from './wheels.ts'

/** How a language names the facts of the evidence. */
export type FieldsWording = {
  readonly ofVehicle: Readonly<Record<VehicleField | 'controlModule' | 'surroundings.lastSet', string>>
  readonly ofWheel: Readonly<Record<WheelField, string>>
  /** Names for facts that are phrased as questions, for use after they have been answered. */
  readonly answered: Readonly<Partial<Record<WheelField, string>>>
  readonly events: Readonly<Record<EventKind, string>>
  readonly wheel: (wheel: string) => string
  readonly atWheel: (wheel: string, fact: string) => string
  readonly storedId: (wheel: string) => string
  readonly asTold: (event: string) => string
  readonly notAsked: (events: string) => string
}

type Words = { readonly fields: FieldsWording; readonly wheels: WheelsWording }

/** A field of the evidence in plain words: `wheels.LF.gauge` is "left front gauge pressure". */
export const fieldWords = (words: Words, field: string): string => {
  const { fields, wheels } = words
  if (isVehicleField(fields, field)) return fields.ofVehicle[field]
  const stored = WheelPosition.safeParse(field.split('controlModule.ids.')[1])
  if (stored.success) return fields.storedId(wheels.names[stored.data])
  if (field.startsWith('events.')) return fields.asTold(eventWords(fields, field))
  const parts = wheelField(field)
  if (parts === null) return field.split('.').map(spaced).join(', ')
  const wheel = wheels.names[parts.wheel]
  return parts.fact === null ? fields.wheel(wheel) : fields.atWheel(wheel, factWords(fields, parts.fact))
}

/** Where a fact was seen, printed before what was seen: `wheels.RR.answer` is "right rear sensor". */
export const seenWords = (words: Words, field: string): string => {
  const parts = wheelField(field)
  const fact = parts?.fact ? words.fields.answered[parts.fact as WheelField] : undefined
  return parts && fact
    ? words.fields.atWheel(words.wheels.names[parts.wheel], fact)
    : fieldWords(words, field)
}

/** A field's words with a capital, to begin a line. */
export const fieldTitle = (words: Words, field: string): string => capitalized(fieldWords(words, field))

/**
 * Fields that nobody checked, in few lines: what was not checked on which wheels, the rest, and what the customer
 * was not asked.
 */
export const uncheckedLines = (words: Words, unchecked: readonly string[]): string[] => {
  const { fields } = words
  const byFact = new Map<string, WheelPosition[]>()
  const events: string[] = []
  const rest: string[] = []
  for (const field of unchecked) {
    const parts = wheelField(field)
    if (parts?.fact) byFact.set(parts.fact, [...(byFact.get(parts.fact) ?? []), parts.wheel])
    else if (field.startsWith('events.')) events.push(eventWords(fields, field))
    else rest.push(fieldWords(words, field))
  }
  return [
    ...[...byFact].map(([fact, wheels]) => `${capitalized(factWords(fields, fact))}: ${wheels.join(', ')}`),
    ...(rest.length === 0 ? [] : [capitalized(rest.join('; '))]),
    ...(events.length === 0 ? [] : [fields.notAsked(events.join(', '))]),
  ]
}

const isVehicleField = (fields: FieldsWording, field: string): field is keyof FieldsWording['ofVehicle'] =>
  Object.hasOwn(fields.ofVehicle, field)

const wheelField = (field: string): { wheel: WheelPosition; fact: string | null } | null => {
  const [head, second, ...fact] = field.split('.')
  const wheel = WheelPosition.safeParse(second)
  if (head !== 'wheels' || !wheel.success) return null
  return { wheel: wheel.data, fact: fact.length === 0 ? null : fact.join(' ') }
}

/** `events.driven-low` and whatever follows it. */
const eventWords = ({ events }: FieldsWording, field: string): string => {
  const [, name = '', ...rest] = field.split('.')
  const kind = EventKind.safeParse(name)
  return [kind.success ? events[kind.data] : spaced(name), ...rest.map(spaced)].join(' ')
}

const factWords = ({ ofWheel }: FieldsWording, fact: string): string =>
  Object.hasOwn(ofWheel, fact) ? ofWheel[fact as WheelField] : spaced(fact)

/** A field that a person typed and that has no words here is shown by its own name. */
const spaced = (name: string): string =>
  name
    .replace(/([A-Z])/g, ' $1')
    .replaceAll('-', ' ')
    .toLowerCase()
