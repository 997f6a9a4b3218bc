import { readySteps } from '@bayledger/ledger/questions/gates'
import { patternOf } from '@bayledger/ledger/questions/pattern-of'
import type { Kind, PayloadOf } from '@bayledger/ledger/registry'
import type { WrenchUsed } from '@bayledger/ledger/subjects/torque/kinds'
import { sensorOf, studsOf, tiresOf } from '@bayledger/reckoning/sheet'
import type { Step } from '@bayledger/reckoning/step'
import { roundTorque } from '@bayledger/reckoning/torque/rounds'
import { axleOf, type RoadPosition, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderPen } from './order-pen.ts'
import type { DemoPerson } from './people.ts'
import { closingRead, pressureSet, relearned, storedIds } from './work-through.ts'

/** A sensor from the shelf, as it is drawn and as its box says. */
export type FittedPart = {
  readonly id: string
  readonly partNumber: string
  readonly lot: string
  readonly madeMonth: string
}

export type Doing = {
  readonly by: DemoPerson
  readonly deviceId: string
  /** Goes round after a wheel was torqued, is aware of a purge, and confirms a figure. */
  readonly second: DemoPerson
  readonly surroundings: { readonly outdoor: number; readonly overnightLow: number; readonly tire: number }
  /** The sensors as they answer when all is done; `null` on a vehicle without any. */
  readonly sensors: {
    readonly ids: Readonly<Record<RoadPosition, string>> & { readonly SP?: string }
    readonly frequencyMHz: number
  } | null
  readonly parts: Partial<Readonly<Record<WheelPosition, FittedPart>>>
  /** Of the service kits; absent: those on the shelf. */
  readonly series?: string
  /** The wrench as it is before this round. */
  readonly wrench: () => WrenchUsed
  /** What the odometer reads before the proof drive, in miles. */
  readonly odometerMiles: number
  /** How long a step takes, in seconds, with all that is walked and fetched for it. */
  readonly secondsOf: (step: Step) => number
  /** The time after so many seconds. */
  readonly pass: (seconds: number) => string
  /** What the look inside a tire finds; absent: sound. */
  readonly inside?: (wheel: WheelPosition) => Partial<PayloadOf<'tire.inspected'>>
  /** Studs that move in the round after some miles; absent: none. */
  readonly moves?: (wheel: RoadPosition, round: number) => readonly number[]
  /** What is written in steps that only want a value; absent: the usual. */
  readonly wordsFor?: (step: Step) => string | undefined
  /** How a step is done where it is done otherwise than usual; absent or `null`: as usual. */
  readonly instead?: (step: Step) => Done | null
  /** Called after each step; whether the work goes on. */
  readonly goesOn?: (step: Step) => boolean
}

/** Closes the ready steps of the plan one by one, each as a careful technician would, until none is left or `goesOn` says so. */
export const doSteps = (pen: OrderPen, doing: Doing): void => {
  for (let step = readySteps(pen.state())[0]; step; step = readySteps(pen.state())[0]) {
    const seconds = doing.secondsOf(step)
    const at = doing.pass(seconds)
    const usual = () => doneOf(pen, doing, step, { at, seconds: Math.round(seconds) })
    const { kind, payload, by } = doing.instead?.(step) ?? usual()
    pen.write(kind, payload, { at, by: by ?? doing.by, deviceId: doing.deviceId })
    if (doing.goesOn && !doing.goesOn(step)) return
  }
}

type Moment = { readonly at: string; readonly seconds: number }
/** What is written of a step, and by whom where it is not whoever does the work. */
export type Done = {
  [K in Kind]: { readonly kind: K; readonly payload: PayloadOf<K>; readonly by?: DemoPerson }
}[Kind]

const doneOf = (pen: OrderPen, doing: Doing, step: Step, moment: Moment): Done => {
  const { stepKey, closedBy: kind } = step
  const state = pen.state()
  const sheet = state.sheet?.sheet
  const wheel = step.wheel ?? 'LF'
  const sensor = sensorOf(sheet)
  const part = doing.parts[wheel]
  switch (kind) {
    case 'part.drawn': {
      const { partNumber, lot, madeMonth } = partAt(pen, part, stepKey)
      return {
        kind,
        payload: {
          stepKey,
          wheel,
          partNumber,
          lot,
          madeMonth,
          quantity: 1,
          matches: { frequencyMHz: sensor?.frequencyMHz ?? null, stem: sensor?.stem ?? null },
        },
      }
    }
    case 'sensor.programmed':
      return {
        kind,
        payload: {
          stepKey,
          wheel,
          sensorId: partAt(pen, part, stepKey).id,
          identity: step.code === 'program-sensor' && step.values ? step.values.identity : 'new',
          frequencyMHz: sensor?.frequencyMHz ?? 0,
          readBack: true,
        },
      }
    case 'sensor.fitted':
      return {
        kind,
        payload: {
          stepKey,
          wheel,
          sensorId: partAt(pen, part, stepKey).id,
          valve: sensor?.stem ?? 'snap-in',
          kitPart: kitOf(doing, sensor?.stem),
          kitLot: null,
          torque: sensor?.stemNutTorque ?? sensor?.stemScrewTorque ?? { value: 17, unit: 'lbf·in' },
        },
      }
    case 'wheel.removed':
      return { kind, payload: { stepKey, wheel, remark: null } }
    case 'wheel.mounted':
      return {
        kind,
        payload: {
          stepKey,
          wheel,
          cameFrom: step.comesFrom ?? wheel,
          seatsMatch: true,
          handStarted: true,
        },
      }
    case 'tire.inspected':
      return { kind, payload: { ...soundInside, stepKey, wheel, ...doing.inside?.(wheel) } }
    case 'sealant.purged':
      return {
        kind,
        payload: { stepKey, wheel, outdoors: true, times: 4, aware: pen.agreedBy(doing.second) },
      }
    case 'leak.checked':
      return { kind, payload: { stepKey, wheel, tight: true, where: null } }
    case 'studs.torqued': {
      const round = step.round ?? 'again'
      const before = state.work[wheel]?.overtaken.length ?? 0
      const moved = round === 'again' ? (doing.moves?.(wheel as RoadPosition, before) ?? []) : []
      return { kind, payload: { ...roundOf(pen, doing, step, moment, moved), round } }
    }
    case 'torque.checked':
      return {
        kind,
        payload: { ...roundOf(pen, doing, step, moment, []), checkedBy: pen.agreedBy(doing.second) },
        by: doing.second,
      }
    case 'pressure.set':
      return { kind, payload: pressureSet(pen, stepKey, wheel, doing) }
    case 'relearn.done':
      return { kind, payload: { ...relearned(pen, stepKey), timed: timedTo(pen, moment, 20) } }
    case 'wheel.checked':
      return { kind, payload: closingRead(pen, stepKey, wheel, doing) }
    case 'module.read':
      return { kind, payload: storedIds(stepKey, doing) }
    case 'drive.done':
      return { kind, payload: driven(pen, doing, stepKey, moment) }
    case 'telltale.observed':
      return {
        kind,
        payload: {
          phase: 'closing',
          stepKey,
          lampCheck: 'lights',
          behavior: 'off',
          timed: timedTo(pen, { ...moment, seconds: 125 }, 0),
        },
      }
    case 'figure.confirmed':
      return {
        kind,
        payload: {
          figure: step.unverified ?? 'studTorque',
          reference: "The maker's own handbook, read again at the vehicle",
          stepKey,
        },
        by: doing.second,
      }
    case 'step.closed': {
      const value = doing.wordsFor?.(step) ?? usualValue(pen, doing, step)
      return { kind, payload: { stepKey, value: step.needs.includes('value') ? value : null } }
    }
  }
}

const partAt = (pen: OrderPen, part: FittedPart | undefined, stepKey: string): FittedPart => {
  if (!part) throw new RangeError(`${pen.number}: no part is at hand for ${stepKey}`)
  return part
}

const kitOf = ({ series }: Doing, stem: 'snap-in' | 'clamp-in' | undefined): string =>
  `${series ?? 'TK'}-${stem === 'clamp-in' ? 'C' : 'S'}`

const soundInside = {
  when: 'inside',
  valve: null,
  stem: null,
  treadDepth32nds: null,
  tireAgeYears: null,
  sensorAgeMonths: null,
  sealantSeen: null,
  tireDamage: null,
  fastenerDamage: null,
  inside: 'sound',
  punctures: [],
} as const satisfies Partial<PayloadOf<'tire.inspected'>>

const roundOf = (
  pen: OrderPen,
  doing: Doing,
  step: Step,
  moment: Moment,
  moved: readonly number[],
): Omit<PayloadOf<'studs.torqued'>, 'round'> => {
  const studs = studsOf(pen.state().sheet?.sheet)
  if (!studs) throw new RangeError(`${pen.number}: the sheet has no torque for ${step.stepKey}`)
  return {
    stepKey: step.stepKey,
    wheel: step.wheel ?? 'LF',
    figure: roundTorque(step.round ?? 'full', studs.torque),
    wrench: doing.wrench(),
    clicked: studs.count,
    total: studs.count,
    moved: [...moved],
    timed: timedTo(pen, { ...moment, seconds: Math.min(moment.seconds, studs.count * 5) }, 0),
  }
}

/** Timed by the tablet: what was walked and fetched before it began is left out. */
const timedTo = (pen: OrderPen, { at, seconds }: Moment, before: number) => {
  const timed = Math.max(1, seconds - before)
  return {
    startedAt: new Date(Date.parse(pen.calendar.at(at)) - timed * 1_000).toISOString(),
    seconds: timed,
  }
}

/** The minutes that count are those at a speed at which they count: not the yard's and the lights'. */
const driven = (
  pen: OrderPen,
  { odometerMiles }: Doing,
  stepKey: string,
  moment: Moment,
): PayloadOf<'drive.done'> => {
  const minutes = Math.floor((moment.seconds - 75) / 60)
  return {
    stepKey,
    minutes,
    odometerOut: { value: odometerMiles, unit: 'mi' },
    odometerIn: { value: odometerMiles + Math.round(minutes * 0.6), unit: 'mi' },
    odometerConfirmed: false,
    lightAtEnd: 'off',
    lampCheckAfter: 'lights-and-goes-out',
    timed: timedTo(pen, moment, 30),
  }
}

/** What a technician writes where a step wants a value. */
const usualValue = (pen: OrderPen, doing: Doing, step: Step): PayloadOf<'step.closed'>['value'] => {
  const { sensors, parts } = doing
  const wheel = step.wheel ?? 'LF'
  const state = pen.state()
  const core = sensorOf(state.sheet?.sheet)?.coreTorque
  switch (step.code) {
    case 'renew-stem':
      return kitOf(doing, sensorOf(state.sheet?.sheet)?.stem)
    case 'torque-core':
    case 'put-core-back':
      return core ? `${core.value} ${core.unit}` : 'by hand'
    case 'inflate-tire':
    case 'inflate-in-restraint':
      return `${step.figure?.kind === 'placard' ? step.figure.psi : 35} psi`
    case 'balance-wheel':
      return { shows: 'figures', unit: 'oz', inner: 0.25, outer: 0, balancedAgain: false }
    case 'check-tires-for-rotation':
      return patternOf(step) === null ? 'stopped: the desk knows' : { arrows: [], sizes: {} }
    case 'read-in-rim':
    case 'read-other-wheel':
      return parts[wheel]?.id ?? sensors?.ids[wheel] ?? 'no sensor'
    case 'match-tire':
      return tiresOf(state.sheet?.sheet)?.[axleOf(wheel)]?.size ?? 'seen'
    case 'find-leak':
    case 'find-leak-after-look':
      return 'at the tread'
    case 'judge-leak':
      return 'plug and patch'
    case 'repair-leak':
      return 'plug and patch together'
    default:
      return 'done'
  }
}
