import { missingOnArrival } from '@bayledger/ledger/questions/gates'
import type { OrderState } from '@bayledger/ledger/state'
import { type EventEvidence, EventKind } from '@bayledger/reckoning/evidence/evidence'
import { isMissing } from '@bayledger/reckoning/sheet'
import { axleOf, readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'

/** One task to look at on arrival; each has a pad of its own, which `row` opens at one of its rows. */
export type ArrivalTask = { readonly row?: string } & (
  | { readonly what: 'surroundings' | 'warning-light' | 'control-module' | 'door-label' | 'sensor-kind' }
  | { readonly what: 'event'; readonly event: EventEvidence['kind'] }
  | { readonly what: 'gauge' | 'sensor' | 'tire'; readonly wheel: WheelPosition }
)

/** How this technician goes around a vehicle. */
export type Pace = 'task-by-task' | 'wheel-by-wheel'

/** What is still to be looked at, in the order of the chosen pace. */
export const tasksLeft = (state: OrderState, pace: Pace): ArrivalTask[] => {
  const tasks = [...missingOnSheet(state), ...missingOnArrival(state).flatMap(tasksOf)]
  // What the vehicle stored comes first: then each sensor is "same as stored", or not.
  const ofVehicle = wholeVehicle.flatMap((what) => tasks.filter((task) => task.what === what))
  if (pace === 'task-by-task')
    return [...ofVehicle, ...perWheel.flatMap((what) => tasks.filter((task) => task.what === what))]
  return [
    ...ofVehicle,
    ...readingOrder.flatMap((wheel) => tasks.filter((task) => 'wheel' in task && task.wheel === wheel)),
  ]
}

/** What nobody has entered yet of this kind of vehicle and is read at the vehicle itself: it comes first. */
const missingOnSheet = ({ sheet }: OrderState): ArrivalTask[] => [
  ...(sheet && isMissing(sheet.sheet, 'placard') ? [{ what: 'door-label' } as const] : []),
  ...(sheet && isMissing(sheet.sheet, 'frequency') ? [{ what: 'sensor-kind' } as const] : []),
]

const wholeVehicle = ['door-label', 'sensor-kind', 'surroundings', 'warning-light', 'control-module'] as const
const perWheel = ['gauge', 'sensor', 'tire'] as const

/**
 * What comes after a task was recorded: going task by task, the same task on the next wheel that lacks it, round the
 * vehicle from the current wheel; wheel by wheel, what this wheel still lacks. Then whatever is left.
 */
export const nextTask = (left: readonly ArrivalTask[], done: ArrivalTask, pace: Pace): ArrivalTask | null => {
  if (!('wheel' in done)) return left[0] ?? null
  const alike = left.filter((task) => 'wheel' in task && isAlike(task, done, pace))
  const from = readingOrder.indexOf(done.wheel)
  const around = (task: ArrivalTask) =>
    'wheel' in task
      ? (readingOrder.indexOf(task.wheel) - from + readingOrder.length) % readingOrder.length
      : 0
  return alike.sort((one, other) => around(one) - around(other))[0] ?? left[0] ?? null
}

export const isSameTask = (one: ArrivalTask, other: ArrivalTask): boolean =>
  one.what === other.what && partOf(one) === partOf(other)

const partOf = (task: ArrivalTask): string | null =>
  'wheel' in task ? task.wheel : 'event' in task ? task.event : null

/** The task whose pad records a field of the evidence, at its row; `null` for what no pad here can record. */
export const taskOfField = (
  field: string,
  tires: OrderState['arrival']['tires'] = {},
): ArrivalTask | null => {
  const [group, name, member] = field.split('.')
  if (group === 'vehicle' && name === 'casing') return casingTask(member, tires)
  if (field === 'vehicle.placard.verified') return { what: 'door-label' }
  if (field === 'surroundings.lastSet.altitude') return { what: 'surroundings', row: 'lastSetAltitude' }
  if (group === 'surroundings')
    return { what: 'surroundings', row: rows.surroundings[name ?? ''] ?? 'outdoor' }
  if (group === 'strayIds') return { what: 'control-module', row: 'stray' }
  if (group === 'controlModule') {
    const row = name === 'ids' ? `id.${member ?? 'LF'}` : (name ?? 'state')
    return { what: 'control-module', row }
  }
  if (group === 'light')
    return name === 'lampCheck' || name === 'behavior' ? { what: 'warning-light', row: name } : null
  if (group === 'events') {
    const event = EventKind.options.find((kind) => kind === name)
    return event === undefined
      ? null
      : { what: 'event', event, row: member === 'wheel' ? 'wheel' : 'happened' }
  }
  const wheel = readingOrder.find((position) => position === name)
  if (group !== 'wheels' || wheel === undefined || member === undefined) return null
  if (member === 'gauge') return { what: 'gauge', wheel }
  const atSensor = rows.sensor[member]
  if (atSensor !== undefined) return { what: 'sensor', wheel, row: atSensor }
  const atTire = rows.tire[member]
  return atTire === undefined ? null : { what: 'tire', wheel, row: atTire }
}

/** The plies of an axle are read on each of its tires: at the first one that was not read yet. */
const casingTask = (axle: string | undefined, tires: OrderState['arrival']['tires']): ArrivalTask | null => {
  const wheels = readingOrder.filter((wheel) => axleOf(wheel) === axle)
  const wheel = wheels.find((one) => tires[one]?.casing === undefined) ?? wheels[0]
  return wheel === undefined ? null : { what: 'tire', wheel, row: 'casing' }
}

/** Which row of which pad holds a member of the evidence. */
const rows: Readonly<Record<'surroundings' | 'sensor' | 'tire', Readonly<Record<string, string>>>> = {
  surroundings: {
    outdoor: 'outdoor',
    tires: 'tires',
    tireTemperature: 'tire',
    overnightLow: 'overnightLow',
    minutesDriven: 'minutesDriven',
    lastSet: 'lastSet',
  },
  sensor: {
    answer: 'answer',
    tries: 'tries',
    id: 'id',
    sensorPressure: 'pressure',
    sensorTemperature: 'temperature',
    battery: 'battery',
    frequencyMHz: 'frequency',
    followsPressure: 'follows',
    learnRefusals: 'learnRefusals',
  },
  tire: {
    valve: 'valve',
    stem: 'stem',
    treadDepth32nds: 'treadTyped',
    tireAgeYears: 'dateCode',
    sensorAgeMonths: 'sensorAge',
    sealantSeen: 'sealant',
    tireDamage: 'damage',
    fastenerDamage: 'fasteners',
    mounted: 'mounted',
  },
}

const isAlike = (task: ArrivalTask, done: ArrivalTask, pace: Pace): boolean =>
  pace === 'task-by-task'
    ? task.what === done.what
    : 'wheel' in task && 'wheel' in done && task.wheel === done.wheel

const tasksOf = ({ code, wheel }: { code: string; wheel: WheelPosition | null }): ArrivalTask[] => {
  if (wheel !== null && (code === 'gauge' || code === 'sensor' || code === 'tire'))
    return [{ what: code, wheel }]
  if (code === 'surroundings' || code === 'warning-light' || code === 'control-module')
    return [{ what: code }]
  return []
}
