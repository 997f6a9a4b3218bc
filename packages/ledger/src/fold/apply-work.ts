import { stepKeys } from '@bayledger/reckoning/step'
import { proofOf } from '../gates.ts'
import type { workKinds } from '../kinds/work.ts'
import { untouchedWheel } from '../order-state.ts'
import { changeWheel } from './change-wheel.ts'
import { closeStep } from './close-step.ts'
import { type Appliers, recorded } from './foldable.ts'

export const applyWork: Appliers<keyof typeof workKinds> = {
  'plan.issued': (state, entry) => ({ ...state, plan: recorded({ plan: entry.payload.plan }, entry) }),
  'figure.confirmed': (state, entry) => {
    const { figure, reference, stepKey } = entry.payload
    const confirmed = { ...state, figures: { ...state.figures, [figure]: recorded({ reference }, entry) } }
    return closeStep(confirmed, stepKey, entry)
  },
  'part.promised': (state, entry) => ({ ...state, promised: recorded(entry.payload, entry) }),
  'part.drawn': (state, entry) => {
    const { wheel, stepKey } = entry.payload
    const drawn = wheel
      ? changeWheel(state, wheel, (work) => ({ ...work, part: recorded(entry.payload, entry) }))
      : state
    return closeStep({ ...drawn, promised: null }, stepKey, entry)
  },
  // A wheel that comes off again starts its torque from nothing: the rounds before are of another fitting.
  'wheel.removed': (state, entry) =>
    closeStep(
      changeWheel(state, entry.payload.wheel, (work) => ({
        ...work,
        removed: recorded({ remark: entry.payload.remark }, entry),
        mounted: null,
        rounds: {},
        checked: null,
      })),
      entry.payload.stepKey,
      entry,
    ),
  'wheel.mounted': (state, entry) =>
    closeStep(
      changeWheel(state, entry.payload.wheel, (work) => ({
        ...work,
        mounted: recorded({ cameFrom: entry.payload.cameFrom }, entry),
        rounds: {},
        checked: null,
      })),
      entry.payload.stepKey,
      entry,
    ),
  'sensor.programmed': (state, entry) =>
    closeStep(
      changeWheel(state, entry.payload.wheel, (work) => ({
        ...work,
        programmed: recorded(entry.payload, entry),
      })),
      entry.payload.stepKey,
      entry,
    ),
  'sensor.fitted': (state, entry) =>
    closeStep(
      changeWheel(state, entry.payload.wheel, (work) => ({
        ...work,
        fitted: recorded(entry.payload, entry),
      })),
      entry.payload.stepKey,
      entry,
    ),
  'sensor.broken': (state, entry) =>
    changeWheel(state, entry.payload.wheel, (work) => ({ ...work, broken: recorded(entry.payload, entry) })),
  // A leak that was found is recorded and leaves its step open.
  'leak.checked': (state, entry) => {
    const { wheel, stepKey, tight } = entry.payload
    const checked = changeWheel(state, wheel, (work) => ({ ...work, leak: recorded(entry.payload, entry) }))
    return closeStep(checked, tight ? stepKey : null, entry)
  },
  'pressure.set': (state, entry) =>
    closeStep(
      changeWheel(state, entry.payload.wheel, (work) => ({
        ...work,
        pressure: recorded(entry.payload, entry),
      })),
      entry.payload.stepKey,
      entry,
    ),
  // A nut that still turns on the second round at the figure sends the wheel back to the first.
  'studs.torqued': (state, entry) => {
    const { stepKey, round, ...seal } = entry.payload
    const sealed = recorded(seal, entry)
    if (round === 'again' && seal.moved.length > 0) {
      const half = state.work[seal.wheel]?.rounds.half
      const opened = changeWheel(state, seal.wheel, (work) => ({
        ...work,
        rounds: half ? { half } : {},
        checked: null,
      }))
      return { ...opened, closed: without(opened.closed, stepKeys.torqueRound(seal.wheel, 'full')) }
    }
    const torqued = changeWheel(state, seal.wheel, (work) => ({
      ...work,
      rounds: { ...work.rounds, [round]: sealed },
    }))
    return closeStep(torqued, stepKey, entry)
  },
  'torque.checked': (state, entry) => {
    const { stepKey, ...seal } = entry.payload
    const sealed = recorded(seal, entry)
    if (seal.moved.length > 0) {
      const half = (state.work[seal.wheel] ?? untouchedWheel).rounds.half
      const opened = changeWheel(state, seal.wheel, (work) => ({
        ...work,
        rounds: half ? { half } : {},
        checked: null,
      }))
      return {
        ...opened,
        closed: without(
          opened.closed,
          stepKeys.torqueRound(seal.wheel, 'full'),
          stepKeys.torqueRound(seal.wheel, 'again'),
        ),
      }
    }
    return closeStep(
      changeWheel(state, seal.wheel, (work) => ({ ...work, checked: sealed })),
      stepKey,
      entry,
    )
  },
  'relearn.done': (state, entry) =>
    closeStep(
      { ...state, relearn: recorded(entry.payload, entry) },
      entry.payload.result === 'refused' ? null : entry.payload.stepKey,
      entry,
    ),
  // Drives add up: the step stays open until the minutes that a warning may take have been driven with the light off.
  'drive.done': (state, entry) => {
    const driven = { ...state, drives: [...state.drives, recorded(entry.payload, entry)] }
    return closeStep(driven, proofOf(driven).verdict === 'proven' ? entry.payload.stepKey : null, entry)
  },
  'step.closed': (state, entry) => closeStep(state, entry.payload.stepKey, entry),
  'step.set_aside': (state, entry) => ({
    ...state,
    setAside: {
      ...state.setAside,
      [entry.payload.stepKey]: recorded({ reason: entry.payload.reason }, entry),
    },
  }),
}

const without = <T>(record: Readonly<Record<string, T>>, ...keys: string[]): Readonly<Record<string, T>> =>
  Object.fromEntries(Object.entries(record).filter(([key]) => !keys.includes(key)))
