import type { FindingCode } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { Answer, BundleTitle } from '@bayledger/reckoning/estimate'
import type { ComebackCause } from '@bayledger/reckoning/money/line-cover'
import type { StepCounts } from '@bayledger/reckoning/ready/ready-time'
import type { StepTime } from '@bayledger/reckoning/ready/step-seconds'
import { listedId } from '@bayledger/reckoning/sensor/sensor-id'
import { inReadingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { Mark, OrderState } from '../state.ts'
import { answerTo, authorizedBundles, isLook, newestBundles } from './answers.ts'
import { countedSteps } from './left-to-do.ts'
import { isSetAside } from './passed-steps.ts'

/** A sensor that did not work any more. `sensorId`: as the vehicle has it stored, or as it was read; in one spelling. */
export type FailedSensor = {
  readonly wheel: WheelPosition
  readonly sensorId: string | null
  readonly ageMonths: number | null
}

export type FittedSensor = {
  readonly wheel: WheelPosition
  readonly sensorId: string
  readonly lot: string | null
  /** YYYY-MM. */
  readonly madeMonth: string | null
}

/** What an order that is over tells its owner: codes and times, no person's name and no price. */
export type JobFigures = {
  /** The confirmed finding that explained the light. */
  readonly cause: FindingCode | null
  readonly comebackOf: string | null
  /** Why it came back after our work; absent of what is no comeback, and of orders from before causes were recorded. */
  readonly comebackCause?: ComebackCause
  /** What was offered, and the answer; `null`: none was given. */
  readonly offered: readonly { readonly title: BundleTitle; readonly answer: Answer | null }[]
  /** What was done, by its largest part; `null`: only looked at. */
  readonly job: BundleTitle | null
  /** How long each closed step took, in the order in which they were closed. */
  readonly steps: readonly StepTime[]
  /** When the last step was closed, UTC text; `null` where there was no work. */
  readonly readyAt: string | null
  readonly promises: { readonly first: string | null; readonly last: string | null }
  /** The plan at the last authorization: when, and what was still to be done then. */
  readonly authorized: {
    readonly at: string
    readonly steps: StepCounts
    readonly partAt: string | null
  } | null
  readonly fitted: readonly FittedSensor[]
  readonly failed: readonly FailedSensor[]
}

/** Findings that say that a sensor itself has failed. */
const sensorFailures: ReadonlySet<FindingCode> = new Set<FindingCode>([
  'sensor-silent',
  'sensor-battery-low',
  'sensor-reads-wrong',
  'sensor-temperature-impossible',
  'sensor-does-not-follow',
])

/** The figures of an order that is over; `null` while it is open. */
export const jobFigures = (state: OrderState): JobFigures | null => {
  if (!state.opened || !(state.handedBack || state.ended)) return null
  const { diagnosis } = state
  const steps = closedSteps(state)
  const promises = state.promises.filter(({ written }) => isBefore(written.writtenAt, steps.at(-1)?.at))
  return {
    cause: diagnosis?.confirmed ? diagnosis.diagnosis.primary : null,
    comebackOf: state.opened.comebackOf,
    ...(state.comeback ? { comebackCause: state.comeback.cause } : {}),
    offered: newestBundles(state)
      .filter((bundle) => !isLook(bundle))
      .map((bundle) => ({ title: bundle.title, answer: answerTo(state, bundle)?.answer ?? null })),
    job: largestBundle(state),
    steps: steps.map(({ code, seconds }) => ({ code, seconds })),
    readyAt: steps.at(-1)?.at ?? null,
    promises: {
      first: state.promises[0]?.promisedAt ?? null,
      last: promises.at(-1)?.promisedAt ?? null,
    },
    authorized: authorizedPlan(state),
    fitted: Object.entries(state.work).flatMap(([wheel, work]) =>
      work?.fitted
        ? [
            {
              wheel: wheel as WheelPosition,
              sensorId: listedId(work.fitted.sensorId),
              lot: work.part?.lot ?? null,
              madeMonth: work.part?.madeMonth ?? null,
            },
          ]
        : [],
    ),
    failed: failedSensors(state),
  }
}

const isBefore = (one: string, other: string | undefined): boolean => other === undefined || one <= other

type ClosedStep = StepTime & { readonly at: string }

/** Each closed step with the seconds since the entry before it: nobody records when they begin. */
const closedSteps = (state: OrderState): readonly ClosedStep[] =>
  (state.plan?.plan.steps ?? [])
    .flatMap((step) => {
      const closed = state.closed[step.stepKey]
      return closed ? [{ code: step.code, written: closed.written }] : []
    })
    .toSorted((one, other) => one.written.seq - other.written.seq)
    .map(({ code, written }) => ({
      code,
      seconds: secondsBetween(markBefore(state.marks, written.seq), written.writtenAt),
      at: written.writtenAt,
    }))

/** The last entry of a person before this one. Entries are numbered from 1 without gaps. */
const markBefore = (marks: readonly Mark[], seq: number): string | undefined => {
  for (let place = seq - 2; place >= 0; place -= 1) {
    const mark = marks[place]
    if (mark && mark.by.kind !== 'system') return mark.writtenAt
  }
  return undefined
}

/** Below 0 where two clocks differ: who counts leaves that out. */
const secondsBetween = (from: string | undefined, to: string): number =>
  from === undefined ? -1 : Math.round((Date.parse(to) - Date.parse(from)) / 1_000)

/** The authorized bundle whose works are most; the look is no work. */
const largestBundle = (state: OrderState): BundleTitle | null =>
  authorizedBundles(state)
    .filter((bundle) => !isLook(bundle))
    .toSorted((one, other) => other.works.length - one.works.length)[0]?.title ?? null

const authorizedPlan = (state: OrderState): JobFigures['authorized'] => {
  if (!state.plan) return null
  const { plan, written } = state.plan
  const wasOpen = plan.steps.filter((step) => {
    const closed = state.closed[step.stepKey]
    return closed ? closed.written.seq > written.seq : !isSetAside(state, step)
  })
  const part = state.promised
  // The server writes the plan after the answer: the answer has the time of the clock that the steps have.
  const answer = state.decisions.at(-1)?.written
  return {
    at: answer?.seq === written.seq - 1 ? answer.writtenAt : written.writtenAt,
    steps: countedSteps(wasOpen.map(({ code }) => code)),
    partAt: part && part.written.seq < written.seq ? part.promisedAt : null,
  }
}

const failedSensors = (state: OrderState): FailedSensor[] => {
  const { diagnosis } = state
  if (!diagnosis?.confirmed) return []
  const wheels = diagnosis.diagnosis.findings
    .filter(({ code }) => sensorFailures.has(code))
    .flatMap((finding) => finding.wheels)
  return inReadingOrder([...new Set(wheels)]).map((wheel) => {
    const reading = state.arrival.wheels[wheel]?.sensor?.reading
    const read = reading?.answer === 'answered' ? reading.id : null
    const stored = state.arrival.module?.notation === 'decimal' ? null : state.arrival.module?.ids[wheel]
    const sensorId = read ?? stored ?? null
    return {
      wheel,
      sensorId: sensorId === null ? null : listedId(sensorId),
      ageMonths: state.arrival.tires[wheel]?.sensorAgeMonths ?? null,
    }
  })
}
