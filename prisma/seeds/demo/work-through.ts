import { readySteps } from '@bayledger/ledger/questions/gates'
import { pressureTargetFor } from '@bayledger/ledger/questions/pressure-target'
import type { Kind, PayloadOf } from '@bayledger/ledger/registry'
import { relearnOf, type Surroundings } from '@bayledger/reckoning/sheet'
import type { Step } from '@bayledger/reckoning/step'
import { type RoadPosition, roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import { fahrenheit, paceFrom, psi, sensorUnder } from './arrival-check.ts'
import { goodGauge } from './instruments.ts'
import type { OrderPen } from './order-pen.ts'
import type { DemoPerson } from './people.ts'
import { tamberStreet } from './places.ts'

/** A proof drive as it was driven, or the words with which it was left to the customer. */
type Drive =
  | {
      readonly at: string
      readonly minutes: number
      readonly odometerOut: number
      readonly odometerIn: number
    }
  | { readonly at: string; readonly leftToCustomer: string }

type Worked = {
  readonly by: DemoPerson
  readonly deviceId: string
  readonly surroundings: { readonly outdoor: number; readonly overnightLow: number; readonly tire: number }
  /** The sensors as they answer when all is done; `null` on a vehicle without any. */
  readonly sensors: {
    readonly ids: Readonly<Record<RoadPosition, string>> & { readonly SP?: string }
    readonly frequencyMHz: number
  } | null
  /** Times of the demo day at which each part of the work begins. */
  readonly pressuresAt: string
  /** Absent: the vehicle has not learned yet. */
  readonly relearnedAt?: string
  /** The closing check and the proof; `null`: not begun. */
  readonly closing: {
    readonly at: string
    readonly drive: Drive
    readonly afterDriveAt?: string
  } | null
}

/**
 * Closes the steps of the job plan one by one, as they become ready, until none is left, or the proof drive is
 * driven in part, or the closing check is due and has not begun. Knows the steps of an order on which no wheel came
 * off; any other throws a RangeError.
 */
export const workThrough = (pen: OrderPen, work: Worked): void => {
  const { closing } = work
  const paces = {
    pressure: paceFrom(work.pressuresAt, 50),
    closing: paceFrom(closing?.at ?? work.pressuresAt, 30),
    after: paceFrom(closing?.afterDriveAt ?? closing?.drive.at ?? work.pressuresAt, 60),
  }
  const write = <K extends Kind>(kind: K, payload: PayloadOf<K>, at: string) =>
    pen.write(kind, payload, { at, by: work.by, deviceId: work.deviceId })

  const closeStep = ({ stepKey, wheel, closedBy }: Step): void => {
    switch (closedBy) {
      case 'pressure.set':
        write('pressure.set', pressureSet(pen, stepKey, wheel ?? 'LF', work), paces.pressure())
        return
      case 'relearn.done':
        write('relearn.done', relearned(pen, stepKey), work.relearnedAt ?? '')
        return
      case 'wheel.checked':
        write('wheel.checked', closingRead(pen, stepKey, wheel as RoadPosition, work), paces.closing())
        return
      case 'module.read':
        write('module.read', storedIds(stepKey, work), paces.closing())
        return
      case 'drive.done':
        if (closing) driveOut(pen, stepKey, closing.drive, write)
        return
      case 'telltale.observed':
        write(
          'telltale.observed',
          { phase: 'closing', stepKey, lampCheck: 'lights', behavior: 'off', timed: null },
          paces.after(),
        )
        return
      case 'step.closed':
        write('step.closed', { stepKey, value: null }, paces.pressure())
        return
      default:
        throw new RangeError(`${pen.number}: the demo does not know how ${stepKey} was done`)
    }
  }

  for (let step = readySteps(pen.state())[0]; step; step = readySteps(pen.state())[0]) {
    if (!closing && !beforeClosing.has(step.closedBy)) return
    if (step.closedBy === 'relearn.done' && work.relearnedAt === undefined) return
    closeStep(step)
    if (readySteps(pen.state())[0]?.stepKey === step.stepKey) return
  }
}

const beforeClosing: ReadonlySet<Step['closedBy']> = new Set(['pressure.set', 'step.closed', 'relearn.done'])

/** A tire set to the target of its temperature. */
export const pressureSet = (
  pen: OrderPen,
  stepKey: string,
  wheel: WheelPosition,
  work: Pick<Worked, 'surroundings'>,
): PayloadOf<'pressure.set'> => {
  const surroundings: Surroundings = {
    outdoor: fahrenheit(work.surroundings.outdoor),
    overnightLow: fahrenheit(work.surroundings.overnightLow),
    tires: 'indoor-warmed',
    tire: fahrenheit(work.surroundings.tire),
    altitudeFeet: tamberStreet.altitudeFeet,
  }
  const target = pressureTargetFor(pen.state(), wheel, surroundings)
  if (!target.ok) throw new RangeError(`${pen.number}, ${wheel}: ${target.refusal.why}`)
  return {
    stepKey,
    wheel,
    target: {
      psi: target.psi,
      placardPsi: target.placardPsi,
      quality: target.quality,
      capped: target.capped,
    },
    // A gauge is read to a tenth; no tire is left under the target.
    asLeft: psi(Math.ceil(target.psi * 10 - 0.5) / 10),
    instrument: goodGauge,
    surroundings,
  }
}

/** A wheel whose sensor answers as the tire was left. */
export const closingRead = (
  pen: OrderPen,
  stepKey: string,
  wheel: WheelPosition,
  work: Pick<Worked, 'surroundings' | 'sensors'>,
): PayloadOf<'wheel.checked'> => {
  const asLeft = pen.state().work[wheel]?.pressure?.asLeft.value
  if (asLeft === undefined || !work.sensors)
    throw new RangeError(`${pen.number}: ${wheel} is read before it is set`)
  return {
    phase: 'closing',
    stepKey,
    wheel,
    mounted: wheel === 'SP' ? null : 'road',
    gauge: { pressure: psi(asLeft), instrument: goodGauge },
    sensor: {
      answer: 'answered',
      tries: 1,
      id: work.sensors.ids[wheel] ?? null,
      pressure: psi(sensorUnder(asLeft)),
      temperature: fahrenheit(work.surroundings.tire),
      battery: 'ok',
      frequencyMHz: work.sensors.frequencyMHz,
      followsPressure: true,
    },
    notPossible: [],
  }
}

export const storedIds = (stepKey: string, work: Pick<Worked, 'sensors'>): PayloadOf<'module.read'> => ({
  phase: 'closing',
  stepKey,
  state: 'read',
  notation: 'hex',
  ids: { ...work.sensors?.ids },
  codes: [],
  strayIds: [],
  why: null,
})

/** A vehicle without sensors learns only while it is driven. */
export const relearned = (pen: OrderPen, stepKey: string): PayloadOf<'relearn.done'> => {
  const method = relearnOf(pen.state().sheet?.sheet)?.method
  if (!method) throw new RangeError(`${pen.number}: the sheet does not say how the vehicle learns`)
  return method === 'reset'
    ? { stepKey, method, confirmed: [], result: 'learns-while-driven', timed: null }
    : { stepKey, method, confirmed: [...roadPositions], result: 'learned', timed: null }
}

const driveOut = (
  pen: OrderPen,
  stepKey: string,
  drive: Drive,
  write: <K extends Kind>(kind: K, payload: PayloadOf<K>, at: string) => unknown,
): void => {
  if ('leftToCustomer' in drive) {
    write('step.set_aside', { stepKey, reason: pen.personal(drive.leftToCustomer) }, drive.at)
    return
  }
  write(
    'drive.done',
    {
      stepKey,
      minutes: drive.minutes,
      odometerOut: { value: drive.odometerOut, unit: 'mi' },
      odometerIn: { value: drive.odometerIn, unit: 'mi' },
      odometerConfirmed: false,
      lightAtEnd: 'off',
      lampCheckAfter: 'lights-and-goes-out',
      timed: leftBefore(pen.calendar.at(drive.at), drive.minutes),
    },
    drive.at,
  )
}

/** The tablet's clock of a drive: the minutes that count and three quarters of one to leave the yard. */
const leftBefore = (back: string, minutes: number): PayloadOf<'drive.done'>['timed'] => {
  const seconds = minutes * 60 + 45
  return { startedAt: new Date(Date.parse(back) - seconds * 1_000).toISOString(), seconds }
}
