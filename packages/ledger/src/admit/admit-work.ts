import { pressureIn } from '@bayledger/reckoning/units/pressure-units'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { wheelNames } from '@bayledger/reckoning/wheels'
import type { Author, Draft } from '../entry.ts'
import { missingOnArrival, roadGate, torquedBy, wheelStand } from '../gates.ts'
import type { workKinds } from '../kinds/work.ts'
import type { OrderState } from '../order-state.ts'
import { pressureTargetFor } from '../pressure-target.ts'
import { admitRound } from './admit-round.ts'
import type { Rules } from './rule.ts'
import { type Refusal, refuse } from './verdict.ts'

export const workRules: Rules<keyof typeof workKinds> = {
  'figure.confirmed': [
    (state, draft) => {
      const enteredBy = state.sheet?.sheet.sources[draft.payload.figure]?.enteredBy
      return draft.writtenBy.kind === 'staff' && enteredBy === draft.writtenBy.staffId
        ? refuse(
            'FIGURE_CONFIRMED_BY_WRITER',
            'You entered this figure; another person confirms it from the source.',
          )
        : null
    },
  ],
  'part.drawn': [
    (state, { payload }) => {
      const wanted = state.sheet?.sheet.sensor
      const { frequencyMHz, stem } = payload.matches
      if (!wanted) return null
      if (frequencyMHz !== null && Math.abs(frequencyMHz - wanted.frequencyMHz) > 1)
        return refuse(
          'PART_DOES_NOT_MATCH',
          `This part is for ${frequencyMHz} MHz; the vehicle listens to ${wanted.frequencyMHz} MHz. Take the right part.`,
        )
      if (stem !== null && stem !== wanted.stem)
        return refuse(
          'PART_DOES_NOT_MATCH',
          `This part has a ${stem} stem; the sheet asks for ${wanted.stem}. Take the right part.`,
        )
      return null
    },
  ],
  'wheel.removed': [
    (state) => {
      const [first] = missingOnArrival(state)
      return first
        ? refuse(
            'ARRIVAL_INCOMPLETE',
            `No wheel comes off before the arrival check is complete. ${first.words}`,
          )
        : null
    },
    (state, { payload }) => {
      const holding = (state.diagnosis?.diagnosis.findings ?? []).find(
        (finding) =>
          finding.holds.includes('wheel-removal') &&
          (finding.wheels.length === 0 || finding.wheels.includes(payload.wheel)),
      )
      return holding
        ? refuse(
            'WHEEL_HELD_BY_FINDING',
            `Keep this wheel on: ${holding.code.replaceAll('-', ' ')} must be settled first. ${holding.next}`,
          )
        : null
    },
    (state, { payload }) =>
      wheelStand(state.work[payload.wheel]) === 'off'
        ? refuse('WHEEL_ALREADY_OFF', `The ${wheelNames[payload.wheel]} wheel is already off.`)
        : null,
  ],
  'wheel.mounted': [
    (state, { payload }) =>
      wheelStand(state.work[payload.wheel]) === 'off'
        ? null
        : refuse(
            'WHEEL_NOT_OFF',
            `The ${wheelNames[payload.wheel]} wheel was not recorded as off. Record that first.`,
          ),
  ],
  'sensor.programmed': [
    (state, { payload }, facts) => {
      const wanted = state.sheet?.sheet.sensor?.frequencyMHz
      if (wanted !== undefined && Math.abs(payload.frequencyMHz - wanted) > 1)
        return refuse(
          'SENSOR_FREQUENCY_WRONG',
          `This sensor sends on ${payload.frequencyMHz} MHz; the vehicle listens to ${wanted} MHz. Take the right sensor.`,
        )
      return idTaken(state, payload.sensorId, payload.wheel, facts.idsOnOtherVehicles, payload.identity)
    },
  ],
  'sensor.fitted': [
    (state, { payload }) => {
      const programmed = state.work[payload.wheel]?.programmed
      return programmed && sensorKey(programmed.sensorId) !== sensorKey(payload.sensorId)
        ? refuse(
            'SENSOR_ID_DIFFERS',
            `The sensor programmed for this wheel ends in ${programmed.sensorId.slice(-4)}; this one ends in ${payload.sensorId.slice(-4)}. Read the sensor in your hand again.`,
          )
        : null
    },
  ],
  'pressure.set': [
    (state, { payload }) => {
      const target = pressureTargetFor(state, payload.wheel, payload.surroundings)
      return target &&
        Math.abs(target.psi - payload.target.psi) <= 0.05 &&
        target.quality === payload.target.quality
        ? null
        : refuse(
            'PRESSURE_TARGET_DIFFERS',
            'The target was computed from other temperatures or another label. Open the step again; it shows the present target.',
          )
    },
    (_state, { payload }) => {
      const over = pressureIn('psi', payload.asLeft) - payload.target.psi
      return over >= -0.05 && over <= 1.55
        ? null
        : refuse(
            'PRESSURE_NOT_ON_TARGET',
            `${payload.asLeft.value} ${payload.asLeft.unit} is ${over < 0 ? 'under' : 'over'} the target of ${payload.target.psi.toFixed(1)} psi. Set it to the target, at most 1.5 psi above, and read again.`,
          )
    },
  ],
  'studs.torqued': [
    (state, draft, facts) => admitRound(state, draft.payload, facts),
    (_state, { payload }) =>
      payload.clicked === payload.total
        ? null
        : refuse(
            'TORQUE_ROUND_INCOMPLETE',
            `${payload.clicked} of ${payload.total} clicked. Every one must click before the round is sealed.`,
          ),
  ],
  'torque.checked': [
    (state, draft, facts) => admitRound(state, draft.payload, facts),
    (state, draft, facts) =>
      facts.secondPersonRequired &&
      torquedBy(state.work[draft.payload.wheel]).some((doer) => isSame(doer, draft.writtenBy))
        ? refuse(
            'SECOND_PERSON_IS_DOER',
            'You torqued this wheel yourself. Another person checks it: let them sign in with their PIN.',
          )
        : null,
    (state, { payload }) =>
      state.work[payload.wheel]?.rounds.again
        ? null
        : refuse('WHEEL_NOT_TORQUED', `The ${wheelNames[payload.wheel]} wheel is not torqued yet.`),
  ],
  'relearn.done': [(state, { payload }) => (payload.method === 'automatic' ? onTheRoad(state) : null)],
  'drive.done': [
    (state) => onTheRoad(state),
    (_state, { payload }) =>
      payload.odometerIn.unit === payload.odometerOut.unit &&
      payload.odometerIn.value < payload.odometerOut.value
        ? refuse(
            'ODOMETER_BACKWARDS',
            'The odometer reads less after the drive than before it. Read both again.',
          )
        : null,
    (state) =>
      state.authority.drive
        ? null
        : refuse(
            'AUTHORITY_MISSING',
            'The customer has not agreed to a drive. Record the consent at the desk first.',
          ),
  ],
}

const onTheRoad = (state: OrderState): Refusal | null => {
  const [first] = roadGate(state)
  return first ? refuse('ROAD_GATE_CLOSED', `The vehicle may not move on the road. ${first.words}`) : null
}

const isSame = (one: Author, other: Draft['writtenBy']): boolean =>
  one.kind === 'staff' && other.kind === 'staff' && one.staffId === other.staffId

/** IDs are numbers whatever their notation: leading zeros and letter case do not make another sensor. */
const sensorKey = (id: string): string => id.toUpperCase().replace(/^0+(?=.)/, '')

const idTaken = (
  state: OrderState,
  id: string,
  wheel: WheelPosition,
  elsewhere: ReadonlySet<string>,
  identity: 'copy' | 'new',
): Refusal | null => {
  const key = sensorKey(id)
  const onThisVehicle = (
    Object.entries(state.arrival.wheels) as [WheelPosition, (typeof state.arrival.wheels)['LF']][]
  ).find(([position, readings]) => {
    const sensor = readings?.sensor?.reading
    if (position === wheel && identity === 'copy') return false
    return sensor?.answer === 'answered' && sensor.id !== null && sensorKey(sensor.id) === key
  })
  if (onThisVehicle)
    return refuse(
      'SENSOR_ID_TAKEN',
      `The ${wheelNames[onThisVehicle[0]]} sensor already has this ID. Program another one.`,
    )
  return [...elsewhere].some((other) => sensorKey(other) === key)
    ? refuse(
        'SENSOR_ID_TAKEN',
        "A sensor on another vehicle of this shop's records has this ID. Program another one.",
      )
    : null
}
