import { type Surroundings, tiresOf } from '@bayledger/reckoning/sheet'
import type { Step } from '@bayledger/reckoning/step'
import { roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import { lastOdometer } from '../src/questions/odometer.ts'
import { patternOf } from '../src/questions/pattern-of.ts'
import { pressureTargetFor } from '../src/questions/pressure-target.ts'
import type { Kind, PayloadOf } from '../src/registry.ts'
import type { OrderState } from '../src/state.ts'
import { agreedBy, gauge, lead, wrench } from './shop.ts'
import { asReceived, newRightRearId } from './tarn.ts'

/** The air outside and in a tire that stood in the bay for an hour. */
export const inTheBay: Surroundings = {
  outdoor: { value: 27, unit: 'F' },
  overnightLow: { value: 11, unit: 'F' },
  tires: 'indoor-warmed',
  tire: { value: 52, unit: 'F' },
  altitudeFeet: 820,
}

export type Written = { [K in Kind]: { readonly kind: K; readonly payload: PayloadOf<K> } }[Kind]

/** What a careful technician would write to close a step of the order in its present state. */
export const closingOf = (state: OrderState, step: Step): Written => {
  const { stepKey } = step
  const wheel = step.wheel ?? 'RR'
  switch (step.closedBy) {
    case 'part.drawn':
      return {
        kind: 'part.drawn',
        payload: {
          stepKey,
          wheel,
          partNumber: 'TS-315-C',
          lot: 'L2291',
          madeMonth: '2025-06',
          quantity: 1,
          matches: { frequencyMHz: 315, stem: 'clamp-in' },
        },
      }
    case 'sensor.programmed':
      return {
        kind: 'sensor.programmed',
        payload: {
          stepKey,
          wheel,
          sensorId: idFor(wheel),
          identity: 'new',
          frequencyMHz: 315,
          readBack: true,
        },
      }
    case 'wheel.removed':
      return { kind: 'wheel.removed', payload: { stepKey, wheel, remark: null } }
    case 'wheel.mounted':
      return {
        kind: 'wheel.mounted',
        payload: {
          stepKey,
          wheel,
          cameFrom: step.comesFrom ?? wheel,
          seatsMatch: true,
          handStarted: true,
        },
      }
    case 'tire.inspected':
      return { kind: 'tire.inspected', payload: { ...insideOf(wheel), stepKey } }
    case 'sensor.fitted':
      return {
        kind: 'sensor.fitted',
        payload: {
          stepKey,
          wheel,
          sensorId: idFor(wheel),
          valve: 'clamp-in',
          kitPart: 'KIT-C7',
          kitLot: null,
          torque: { value: 62, unit: 'lbf·in' },
        },
      }
    case 'sealant.purged':
      return {
        kind: 'sealant.purged',
        payload: { stepKey, wheel, outdoors: true, times: 4, aware: agreedBy(lead) },
      }
    case 'leak.checked':
      return { kind: 'leak.checked', payload: { stepKey, wheel, tight: true, where: null } }
    case 'studs.torqued':
      return {
        kind: 'studs.torqued',
        payload: {
          ...roundOf(wheel, stepKey),
          figure: step.figure?.kind === 'torque' ? step.figure.torque : { value: 100, unit: 'lbf·ft' },
          round: step.round ?? 'again',
        },
      }
    case 'torque.checked':
      return {
        kind: 'torque.checked',
        payload: { ...roundOf(wheel, stepKey), checkedBy: agreedBy(lead) },
      }
    case 'pressure.set':
      return { kind: 'pressure.set', payload: pressureOf(state, wheel, stepKey) }
    case 'relearn.done':
      return {
        kind: 'relearn.done',
        payload: {
          stepKey,
          method: 'automatic',
          confirmed: [...roadPositions],
          result: 'learns-while-driven',
          timed: took(150),
        },
      }
    case 'wheel.checked':
      return { kind: 'wheel.checked', payload: closingReadOf(state, wheel, stepKey) }
    case 'module.read':
      return {
        kind: 'module.read',
        payload: {
          phase: 'closing',
          stepKey,
          state: 'read',
          notation: 'hex',
          ids: Object.fromEntries(roadPositions.map((position) => [position, idFor(position)])),
          codes: [],
          strayIds: [],
          why: null,
        },
      }
    case 'drive.done':
      return {
        kind: 'drive.done',
        payload: {
          stepKey,
          minutes: 23,
          odometerOut: { value: lastMiles(state), unit: 'mi' },
          odometerIn: { value: lastMiles(state) + 15, unit: 'mi' },
          odometerConfirmed: false,
          lightAtEnd: 'off',
          lampCheckAfter: 'lights-and-goes-out',
          timed: took(23 * 60 + 20),
        },
      }
    case 'telltale.observed':
      return {
        kind: 'telltale.observed',
        payload: { phase: 'closing', stepKey, lampCheck: 'lights', behavior: 'off', timed: took(125) },
      }
    case 'figure.confirmed':
      return {
        kind: 'figure.confirmed',
        payload: { figure: 'studTorque', reference: "maker's manual, page 312", stepKey },
      }
    case 'step.closed':
      return {
        kind: 'step.closed',
        payload: { stepKey, value: step.needs.includes('value') ? valueFor(state, step) : null },
      }
  }
}

const valueFor = (state: OrderState, step: Step): PayloadOf<'step.closed'>['value'] => {
  if (step.code === 'balance-wheel')
    return { shows: 'figures', unit: 'oz', inner: 0.25, outer: 0, balancedAgain: false }
  const pattern = patternOf(step)
  if (pattern === null) return 'done'
  const tires = tiresOf(state.sheet?.sheet)
  // A plan of five may be of another sheet than the order's, which names no such spare: then it is like the others.
  return {
    arrows: [],
    sizes: pattern.startsWith('five') && tires && !tires.spare ? { SP: tires.rear.size } : {},
  }
}

/** The sensor that a wheel goes home with: its own, or the new one. */
const idFor = (wheel: WheelPosition): string =>
  wheel === 'SP' ? '0A1B2CFF' : (asReceived[wheel].id ?? newRightRearId)

const roundOf = (wheel: WheelPosition, stepKey: string): Omit<PayloadOf<'studs.torqued'>, 'round'> => ({
  stepKey,
  wheel,
  figure: { value: 100, unit: 'lbf·ft' },
  wrench,
  clicked: 5,
  total: 5,
  moved: [],
  timed: took(16),
})

/** Timed by the tablet. When it began is read by nothing that a test decides. */
const took = (seconds: number) => ({ startedAt: '2026-01-12T15:30:00.000Z', seconds })

const insideOf = (wheel: WheelPosition) => ({
  when: 'inside' as const,
  wheel,
  valve: null,
  stem: null,
  treadDepth32nds: null,
  tireAgeYears: null,
  sensorAgeMonths: null,
  sealantSeen: null,
  tireDamage: null,
  fastenerDamage: null,
  inside: 'sound' as const,
  punctures: [],
})

const pressureOf = (state: OrderState, wheel: WheelPosition, stepKey: string): PayloadOf<'pressure.set'> => {
  // Without a sheet there is no target; somebody might still write one down, and is refused.
  const target = pressureTargetFor(state, wheel, inTheBay)
  const { psi, placardPsi, quality, capped } = target.ok
    ? target
    : { psi: 35, placardPsi: 35, quality: 'assumed' as const, capped: false }
  return {
    stepKey,
    wheel,
    target: { psi, placardPsi, quality, capped },
    asLeft: { value: psi, unit: 'psi' },
    instrument: gauge,
    surroundings: inTheBay,
  }
}

const closingReadOf = (
  state: OrderState,
  wheel: WheelPosition,
  stepKey: string,
): PayloadOf<'wheel.checked'> => {
  const left = state.work[wheel]?.pressure?.asLeft ?? { value: 35, unit: 'psi' as const }
  return {
    phase: 'closing',
    stepKey,
    wheel,
    mounted: 'road',
    gauge: { pressure: left, instrument: gauge },
    sensor: {
      answer: 'answered',
      tries: 1,
      id: idFor(wheel),
      pressure: left,
      temperature: { value: 52, unit: 'F' },
      battery: 'ok',
      frequencyMHz: 315,
      followsPressure: true,
    },
    notPossible: [],
  }
}

/** What the odometer read last, miles. */
const lastMiles = (state: OrderState): number => lastOdometer(state)?.distance.value ?? 88_141
