import { readySteps } from '@bayledger/ledger/gates'
import type { Kind, PayloadOf } from '@bayledger/ledger/kinds/registry'
import { pressureTargetFor } from '@bayledger/ledger/pressure-target'
import type { Surroundings } from '@bayledger/reckoning/sheet'
import type { Step } from '@bayledger/reckoning/step'
import { type RoadPosition, roadPositions } from '@bayledger/reckoning/wheels'
import { fahrenheit, paceFrom, psi, sensorUnder } from './arrival-check.ts'
import { goodGauge } from './instruments.ts'
import type { OrderPen } from './order-pen.ts'
import type { DemoPerson } from './people.ts'
import { tamberStreet } from './places.ts'

type Worked = {
  readonly by: DemoPerson
  readonly deviceId: string
  readonly surroundings: { readonly outdoor: number; readonly overnightLow: number; readonly tire: number }
  readonly wheels: Readonly<Record<RoadPosition, string>>
  readonly frequencyMHz: number
  /** Times of the demo day at which each part of the work begins. */
  readonly pressuresAt: string
  readonly relearnedAt?: string
  /** The closing check and the proof; `null`: not begun. */
  readonly closing: {
    readonly at: string
    readonly drive: {
      readonly minutes: number
      readonly at: string
      readonly odometerOut: number
      readonly odometerIn: number
    }
    readonly afterDriveAt?: string
  } | null
}

/**
 * Closes the steps of the job plan one by one, as they become ready, until none is left or the proof drive has
 * been driven in part, or the closing check has not begun. Knows the steps of an order on which no wheel came off; another one throws.
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

  for (let step = readySteps(pen.state())[0]; step; step = readySteps(pen.state())[0]) {
    const { stepKey } = step
    if (!closing && !beforeClosing.has(step.closedBy)) return
    switch (step.closedBy) {
      case 'pressure.set':
        write('pressure.set', pressureSet(pen, step, work), paces.pressure())
        break
      case 'relearn.done':
        write(
          'relearn.done',
          { stepKey, method: relearnMethod(pen), confirmed: [...roadPositions], result: 'learned' },
          work.relearnedAt ?? work.pressuresAt,
        )
        break
      case 'wheel.checked':
        write('wheel.checked', closingRead(pen, step, work), paces.closing())
        break
      case 'module.read':
        write(
          'module.read',
          {
            phase: 'closing',
            stepKey,
            state: 'read',
            notation: 'hex',
            ids: work.wheels,
            codes: [],
            strayIds: [],
            why: null,
          },
          paces.closing(),
        )
        break
      case 'drive.done': {
        if (!closing) return
        const { minutes, at, odometerOut, odometerIn } = closing.drive
        write(
          'drive.done',
          {
            stepKey,
            minutes,
            odometerOut: { value: odometerOut, unit: 'mi' },
            odometerIn: { value: odometerIn, unit: 'mi' },
            lightAtEnd: 'off',
            lampCheckAfter: 'lights-and-goes-out',
          },
          at,
        )
        if (!pen.state().closed[stepKey]) return
        break
      }
      case 'telltale.observed':
        write(
          'telltale.observed',
          { phase: 'closing', stepKey, lampCheck: 'lights', behavior: 'off' },
          paces.after(),
        )
        break
      case 'step.closed':
        write('step.closed', { stepKey, value: null }, paces.after())
        break
      default:
        throw new RangeError(`${pen.number}: the demo does not know how ${stepKey} was done`)
    }
  }
}

const beforeClosing: ReadonlySet<Step['closedBy']> = new Set(['pressure.set', 'relearn.done'])

const pressureSet = (pen: OrderPen, step: Step, work: Worked): PayloadOf<'pressure.set'> => {
  const wheel = step.wheel ?? 'LF'
  const surroundings: Surroundings = {
    outdoor: fahrenheit(work.surroundings.outdoor),
    overnightLow: fahrenheit(work.surroundings.overnightLow),
    tires: 'indoor-warmed',
    tire: fahrenheit(work.surroundings.tire),
    altitudeFeet: tamberStreet.altitudeFeet,
  }
  const target = pressureTargetFor(pen.state(), wheel, surroundings)
  if (!target) throw new RangeError(`${pen.number}: no label figure for ${wheel}`)
  return {
    stepKey: step.stepKey,
    wheel,
    target: {
      psi: target.psi,
      placardPsi: target.placardPsi,
      quality: target.quality,
      capped: target.capped,
    },
    // A gauge is read to a tenth; nobody stops under the target.
    asLeft: psi(Math.ceil(target.psi * 10 - 0.5) / 10),
    instrument: goodGauge,
    surroundings,
  }
}

const closingRead = (pen: OrderPen, step: Step, work: Worked): PayloadOf<'wheel.checked'> => {
  const wheel = step.wheel as RoadPosition
  const asLeft = pen.state().work[wheel]?.pressure?.asLeft.value
  if (asLeft === undefined) throw new RangeError(`${pen.number}: ${wheel} is read before it is set`)
  return {
    phase: 'closing',
    stepKey: step.stepKey,
    wheel,
    mounted: 'road',
    gauge: { pressure: psi(asLeft), instrument: goodGauge },
    sensor: {
      answer: 'answered',
      tries: 1,
      id: work.wheels[wheel],
      pressure: psi(sensorUnder(asLeft)),
      temperature: fahrenheit(work.surroundings.tire),
      battery: 'ok',
      frequencyMHz: work.frequencyMHz,
      followsPressure: true,
    },
    notPossible: [],
  }
}

const relearnMethod = (pen: OrderPen): PayloadOf<'relearn.done'>['method'] => {
  const method = pen.state().sheet?.sheet.relearn?.method
  if (!method) throw new RangeError(`${pen.number}: the sheet does not say how the vehicle learns`)
  return method
}
