import { judgeAsLeft, usualAfterSetLimits } from '@bayledger/reckoning/pressure/after-set'
import { isSameFrequency } from '@bayledger/reckoning/sensor/frequency'
import {
  matchPart,
  type PartRefusal,
  type SensorNeed,
  type SensorPart,
} from '@bayledger/reckoning/sensor/part-match'
import { idKey } from '@bayledger/reckoning/sensor/sensor-id'
import { sensorNeed } from '@bayledger/reckoning/sensor/sensor-need'
import { isMissing, sensorOf, tiresOf } from '@bayledger/reckoning/sheet'
import { namedStep, type Step } from '@bayledger/reckoning/step'
import { readTireSize } from '@bayledger/reckoning/tire/read-tire-size'
import { gaugeKilopascals, millimeters } from '@bayledger/reckoning/units/measured'
import { inKilopascals } from '@bayledger/reckoning/units/pressure-units'
import { balanceDoubt, balancedFor } from '@bayledger/reckoning/wheel/balance-left'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { axleOf, readingOrder } from '@bayledger/reckoning/wheels'
import { type Refusal, refuse } from '../../admit/refusal.ts'
import { refuseOdometer } from '../../admit/refuse-odometer.ts'
import type { Rules } from '../../admit/rule.ts'
import { fitsInto, orderMinutes } from '../../questions/drive-clock.ts'
import { driveOdometerDoubt } from '../../questions/odometer.ts'
import { patternOf } from '../../questions/pattern-of.ts'
import { overTargetPsi, pressureTargetFor } from '../../questions/pressure-target.ts'
import { rotationRefused } from '../../questions/rotating-tires.ts'
import { tireTroubleAt } from '../../questions/troubles.ts'
import { roadShut } from '../../questions/why-not.ts'
import type { PayloadOf } from '../../registry.ts'
import type { OrderState } from '../../state.ts'
import { correctedPressure } from '../arrival/corrected-pressure.ts'
import { knownGauge } from '../arrival/rules.ts'
import type { workKinds } from './kinds.ts'

export const workRules: Rules<keyof typeof workKinds> = {
  'figure.confirmed': [
    (state, { payload: { figure } }) =>
      state.sheet && isMissing(state.sheet.sheet, figure) ? refuse('FIGURE_MISSING', { figure }) : null,
    (state, draft) => {
      const enteredBy = state.sheet?.sheet.sources[draft.payload.figure]?.enteredBy
      return draft.writtenBy.kind === 'staff' && enteredBy?.toLowerCase() === draft.writtenBy.staffId
        ? refuse('FIGURE_CONFIRMED_BY_WRITER', { figure: draft.payload.figure })
        : null
    },
  ],
  'part.drawn': [
    (state, { payload }, facts) => {
      const need = state.sheet ? sensorNeed(state.sheet.sheet) : null
      if (need === null) return null
      const { frequencyMHz, stem } = payload.matches
      const known = facts.stock.get(payload.partNumber)
      const asRead: SensorPart = {
        ...notMarked,
        frequenciesMHz: frequencyMHz === null ? null : [frequencyMHz],
        stem,
        madeMonth: payload.madeMonth,
        state: null,
      }
      // What the stock list knows of the part counts beside what is marked on it: "not marked" never hides it.
      const asListed: SensorPart = {
        ...asRead,
        frequenciesMHz: known?.frequenciesMHz ?? null,
        stem: known?.stem ?? null,
        madeMonth: known?.madeMonth ?? null,
        protocols: known?.protocols ?? null,
        hole: known?.holeMillimeters == null ? null : millimeters(known.holeMillimeters),
        ratedPressure: known?.ratedPsi == null ? null : ratedPressure(known.ratedPsi),
        shelfMonths: known?.shelfMonths ?? null,
        state: known?.heldBack == null ? null : { state: 'held-back', why: known.heldBack },
      }
      const refusals = refusalsOf(need, [asRead, asListed], facts.now)
      return refusals.length === 0 ? null : refuse('PART_DOES_NOT_MATCH', { refusals })
    },
  ],
  'wheel.removed': [],
  'wheel.mounted': [
    (state, { payload }) => {
      const { wheel, cameFrom } = payload
      const damaged = cameFrom === 'SP' ? undefined : tireTroubleAt(state, wheel)
      return damaged
        ? refuse('WHEEL_PARKED', { wheel, what: damaged.what, waitsFor: damaged.waitsFor })
        : null
    },
  ],
  'sensor.programmed': [
    (state, { payload }, facts) => {
      const wanted = sensorOf(state.sheet?.sheet)?.frequencyMHz
      if (wanted !== undefined && !isSameFrequency(payload.frequencyMHz, wanted))
        return refuse('SENSOR_FREQUENCY_WRONG', { foundMHz: payload.frequencyMHz, wantedMHz: wanted })
      return idTaken(state, payload.sensorId, payload.wheel, facts.idsOnOtherVehicles, payload.identity)
    },
  ],
  'sensor.fitted': [
    (state, { payload }, facts) =>
      idTaken(
        state,
        payload.sensorId,
        payload.wheel,
        facts.idsOnOtherVehicles,
        state.work[payload.wheel]?.programmed?.identity ?? 'copy',
      ),
    (state, { payload }) => {
      const programmed = state.work[payload.wheel]?.programmed
      return programmed && idKey(programmed.sensorId, 'hex') !== idKey(payload.sensorId, 'hex')
        ? refuse('SENSOR_ID_DIFFERS', {
            programmed: programmed.sensorId.slice(-4),
            found: payload.sensorId.slice(-4),
          })
        : null
    },
  ],
  'pressure.set': [
    (_state, { payload }, facts) => knownGauge(payload.instrument, facts),
    (state, { payload }) => {
      const target = pressureTargetFor(state, payload.wheel, payload.surroundings)
      if (!target.ok) return refuse('PRESSURE_TARGET_DIFFERS', target.refusal)
      return Math.abs(target.psi - payload.target.psi) <= 0.05 &&
        target.quality === payload.target.quality &&
        target.placardPsi === payload.target.placardPsi &&
        target.capped === payload.target.capped
        ? null
        : refuse('PRESSURE_TARGET_DIFFERS', { why: 'changed' })
    },
    (state, { payload }) => {
      const target = inKilopascals({ value: payload.target.psi, unit: 'psi' })
      const asLeft = correctedPressure(payload.asLeft, payload.instrument)
      const overPsi = overTargetPsi(payload.surroundings)
      const maximumPsi = tiresOf(state.sheet?.sheet)?.[axleOf(payload.wheel)]?.sidewallMaximumPsi ?? null
      const left = judgeAsLeft(
        target,
        inKilopascals(asLeft),
        { ...usualAfterSetLimits, overPsi },
        maximumPsi === null ? null : inKilopascals({ value: maximumPsi, unit: 'psi' }),
      )
      if (left === 'over-sidewall' && maximumPsi !== null)
        return refuse('PRESSURE_OVER_SIDEWALL', { wheel: payload.wheel, found: asLeft, maximumPsi })
      return left === 'on-target' || left === 'over-sidewall'
        ? null
        : refuse('PRESSURE_NOT_ON_TARGET', {
            side: left,
            found: asLeft,
            targetPsi: payload.target.psi,
            overPsi,
          })
    },
  ],
  'relearn.done': [(state, { payload }) => (payload.method === 'automatic' ? roadShut(state) : null)],
  'step.closed': [
    (state, { payload: { stepKey, value } }) => {
      const step = state.plan?.plan.steps.find((one) => one.stepKey === stepKey)
      return step && value !== null ? valueRefused(state, step, value) : null
    },
  ],
  'drive.done': [
    (state, { payload }) =>
      payload.odometerIn.unit !== payload.odometerOut.unit ||
      payload.odometerIn.value < payload.odometerOut.value
        ? refuse('ODOMETER_BACKWARDS', {})
        : refuseOdometer(driveOdometerDoubt(state, payload, payload.odometerConfirmed)),
    (state, { payload, writtenAt }, { now }) => {
      const open = orderMinutes(state, { writtenAt, now })
      return open === null || fitsInto(payload.minutes, open)
        ? null
        : refuse('DRIVE_LONGER_THAN_ORDER', { minutes: payload.minutes, orderMinutes: Math.floor(open) })
    },
  ],
  'drive.left': [],
  'plan.issued': [],
  'part.promised': [],
  'sealant.purged': [],
  'sensor.broken': [],
  'leak.checked': [],
  'step.set_aside': [],
}

const valueRefused = (
  state: OrderState,
  step: Step,
  value: NonNullable<PayloadOf<'step.closed'>['value']>,
): Refusal | null => {
  const isBalance = step.code === 'balance-wheel'
  const pattern = patternOf(step)
  if (typeof value === 'string') {
    if (isBalance) return refuse('BALANCE_UNCLEAR', { why: 'in-words' })
    return pattern === null ? null : refuse('ROTATION_NOT_ALLOWED', { why: 'in-words' })
  }
  if ('shows' in value) {
    if (!isBalance) return refuse('STEP_OF_OTHER_KIND', { why: 'other-kind', step: namedStep(step) })
    const doubt = balanceDoubt(value, balancedFor(state.sheet?.sheet, step.wheel ?? 'SP'))
    return doubt && refuse('BALANCE_UNCLEAR', doubt)
  }
  if (pattern === null) return refuse('STEP_OF_OTHER_KIND', { why: 'other-kind', step: namedStep(step) })
  for (const wheel of readingOrder) {
    const found = value.sizes[wheel]
    if (found !== undefined && !readTireSize(found).ok) return refuse('TIRE_SIZE_UNREAD', { wheel, found })
  }
  const refused = rotationRefused(state, pattern, value)
  return refused && refuse('ROTATION_NOT_ALLOWED', { why: 'tires', ...refused })
}

/** What speaks against a part by any of what is known of it, each aspect once. */
const refusalsOf = (need: SensorNeed, knownAs: readonly SensorPart[], now: string): PartRefusal[] => {
  const refusals = knownAs.flatMap((part) => {
    const match = matchPart(need, part, now)
    return match.fits ? [] : match.refusals
  })
  return refusals.filter(
    ({ aspect }, index) => refusals.findIndex((other) => other.aspect === aspect) === index,
  )
}

const ratedPressure = (psi: number) => gaugeKilopascals(inKilopascals({ value: psi, unit: 'psi' }))

/** Facts that nobody reads off a part when it is drawn; another entry or the maker's sheet gives them later. */
const notMarked = {
  protocols: null,
  ratedPressure: null,
  ratedSpeed: null,
  hole: null,
  shelfMonths: null,
} as const

/** The IDs in use at a position: the one read on arrival and, at another wheel than the one in hand, the one given since. */
const idsAt = (state: OrderState, position: WheelPosition, inHand: boolean): string[] => {
  const reading = state.arrival.wheels[position]?.sensor?.reading
  const given = inHand ? null : (state.work[position]?.fitted ?? state.work[position]?.programmed)
  return [
    ...(reading?.answer === 'answered' && reading.id !== null ? [reading.id] : []),
    ...(given ? [given.sensorId] : []),
  ]
}

const idTaken = (
  state: OrderState,
  id: string,
  wheel: WheelPosition,
  elsewhere: ReadonlySet<string>,
  identity: 'copy' | 'new',
): Refusal | null => {
  const key = idKey(id, 'hex')
  const taken = readingOrder.find(
    (position) =>
      !(position === wheel && identity === 'copy') &&
      idsAt(state, position, position === wheel).some((other) => idKey(other, 'hex') === key),
  )
  if (taken) return refuse('SENSOR_ID_TAKEN', { wheel: taken })
  return [...elsewhere].some((other) => idKey(other, 'hex') === key)
    ? refuse('SENSOR_ID_TAKEN', { wheel: null })
    : null
}
