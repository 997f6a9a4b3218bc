import { missingOnArrival } from '@bayledger/ledger/gates'
import type { OrderState } from '@bayledger/ledger/order-state'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'

/** One thing to look at on arrival; each has a pad of its own. */
export type Thing =
  | { readonly what: 'surroundings' | 'warning-light' | 'control-module' }
  | { readonly what: 'gauge' | 'sensor' | 'tire'; readonly wheel: WheelPosition }

/** How this technician walks round a vehicle. */
export type Pace = 'task-by-task' | 'wheel-by-wheel'

/** What is still to be looked at, in the order of the chosen pace. */
export const thingsLeft = (state: OrderState, pace: Pace): Thing[] => {
  const things = missingOnArrival(state).flatMap(thingOf)
  if (pace === 'task-by-task') return things
  return [
    ...things.filter(({ what }) => what === 'surroundings' || what === 'warning-light'),
    ...readingOrder.flatMap((wheel) => things.filter((thing) => 'wheel' in thing && thing.wheel === wheel)),
    ...things.filter(({ what }) => what === 'control-module'),
  ]
}

/**
 * What comes after a thing was recorded: going task by task, the same on the next wheel that lacks it, round the
 * vehicle from where the technician stands; wheel by wheel, what this wheel still lacks. Then whatever is left.
 */
export const thingAfter = (left: readonly Thing[], done: Thing, pace: Pace): Thing | null => {
  if (!('wheel' in done)) return left[0] ?? null
  const alike = left.filter((thing) => 'wheel' in thing && isAlike(thing, done, pace))
  const from = readingOrder.indexOf(done.wheel)
  const around = (thing: Thing) =>
    'wheel' in thing
      ? (readingOrder.indexOf(thing.wheel) - from + readingOrder.length) % readingOrder.length
      : 0
  return alike.sort((one, other) => around(one) - around(other))[0] ?? left[0] ?? null
}

export const isSameThing = (one: Thing, other: Thing): boolean =>
  one.what === other.what && ('wheel' in one ? one.wheel : null) === ('wheel' in other ? other.wheel : null)

/** The thing whose pad records a field of the evidence; `null` for what only the desk can find out. */
export const thingOfField = (field: string): Thing | null => {
  const [group, name, member] = field.split('.')
  if (group === 'surroundings') return { what: 'surroundings' }
  if (group === 'controlModule' || group === 'strayIds') return { what: 'control-module' }
  if (group === 'light') return name === 'reported' ? null : { what: 'warning-light' }
  const wheel = readingOrder.find((position) => position === name)
  if (group !== 'wheels' || wheel === undefined) return null
  if (member === 'gauge') return { what: 'gauge', wheel }
  return sensorFields.has(member ?? '') ? { what: 'sensor', wheel } : { what: 'tire', wheel }
}

const sensorFields = new Set([
  'answer',
  'tries',
  'id',
  'sensorPressure',
  'sensorTemperature',
  'battery',
  'frequencyMHz',
  'followsPressure',
])

const isAlike = (thing: Thing, done: Thing, pace: Pace): boolean =>
  pace === 'task-by-task'
    ? thing.what === done.what
    : 'wheel' in thing && 'wheel' in done && thing.wheel === done.wheel

const thingOf = ({ code, wheel }: { code: string; wheel: WheelPosition | null }): Thing[] => {
  if (wheel !== null && (code === 'gauge' || code === 'sensor')) return [{ what: code, wheel }]
  if (code === 'surroundings' || code === 'warning-light' || code === 'control-module')
    return [{ what: code }]
  return []
}
