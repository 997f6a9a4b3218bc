import {
  blankOrder,
  type OrderState,
  type TorqueSeal,
  untouchedWheel,
  type WheelReadings,
  type WheelWork,
} from '@bayledger/ledger/state'
import type { Step } from '@bayledger/reckoning/step'
import type { TorqueRound } from '@bayledger/reckoning/torque/torque-rounds'
import type { RoadPosition, WheelPosition } from '@bayledger/reckoning/wheels'
import { workedScope } from './worked-estimate.ts'
import { advisor, digest, lead, technician, written } from './worked-people.ts'
import { workedSheet } from './worked-sheet.ts'

const gauge = { instrumentId: lead, code: 'GA-1', correctionPsi: 0.2 }
const wrench = {
  instrumentId: lead,
  code: 'W-07',
  dueOn: '2026-06-15',
  cyclesBefore: 1_220,
  rangeLow: 30,
  rangeHigh: 250,
  rangeUnit: 'lbf·ft' as const,
}

export const sensorIds: Readonly<Record<RoadPosition, string>> = {
  LF: '0A1B2C10',
  RF: '0A1B2C11',
  RR: '0A1B2C12',
  LR: '0A1B2C13',
}

const answering = (seq: number, psi: number, id: string): WheelReadings => ({
  mounted: 'road',
  gauge: { pressure: { value: psi, unit: 'psi' }, instrument: gauge, written: written(seq) },
  sensor: {
    reading: {
      answer: 'answered',
      tries: 1,
      id,
      pressure: { value: Math.round((psi - 0.4) * 10) / 10, unit: 'psi' },
      temperature: { value: 27, unit: 'F' },
      battery: 'ok',
      frequencyMHz: 315,
      followsPressure: null,
    },
    written: written(seq),
  },
  notPossible: [],
})

const round = (seq: number, staffId = technician): TorqueSeal => ({
  wheel: 'RR',
  figure: { value: 100, unit: 'lbf·ft' },
  wrench,
  clicked: 5,
  total: 5,
  moved: [],
  timed: { startedAt: '2026-01-12T16:20:00.000Z', seconds: 16 },
  written: written(seq, staffId),
})

const rounds: Readonly<Record<TorqueRound, ReturnType<typeof round>>> = {
  half: { ...round(27), figure: { value: 50, unit: 'lbf·ft' } },
  full: round(28),
  again: round(29),
}

const pressureSet = (
  seq: number,
  wheel: WheelPosition,
  target: number,
  asLeft: number,
  label: number,
): WheelWork['pressure'] => ({
  stepKey: `${wheel}.pressure.set`,
  wheel,
  target: { psi: target, placardPsi: label, quality: 'measured', capped: false },
  asLeft: { value: asLeft, unit: 'psi' },
  instrument: gauge,
  surroundings: {
    outdoor: { value: 27, unit: 'F' },
    overnightLow: null,
    tires: 'indoor-warmed',
    tire: { value: 52, unit: 'F' },
    altitudeFeet: 820,
  },
  written: written(seq),
})

const setWheel = (
  seq: number,
  wheel: WheelPosition,
  target: number,
  asLeft: number,
  label = 35,
): WheelWork => ({
  ...untouchedWheel,
  pressure: pressureSet(seq, wheel, target, asLeft, label),
})

const decision = (bundleKey: string, answer: 'authorized' | 'deferred') => ({
  [bundleKey]: {
    revision: 1,
    answer,
    deferredUntil: answer === 'deferred' ? '2026-04-01' : null,
    cautionsShown: answer === 'deferred' ? [{ number: 'CT-05', version: 1 }] : [],
    written: written(21, advisor),
  },
})

const arrivalModule = {
  phase: 'arrival' as const,
  stepKey: null,
  state: 'read' as const,
  notation: 'hex' as const,
  ids: { ...sensorIds, RR: '00C0FFEE' },
  codes: [{ class: 'no-signal' as const, wheel: 'RR' as const, text: 'RR sensor, no signal' }],
  strayIds: [],
  why: null,
  written: written(12),
}

const fitStep: Step = {
  stepKey: 'RR.sensor.fit',
  code: 'fit-sensor',
  round: null,
  opensTire: true,
  height: 'lifted',
  wheel: 'RR',
  values: { valve: 'clamp-in', highLabelPsi: null },
  closedBy: 'sensor.fitted',
  figure: null,
  needs: [],
  waitsFor: [],
  unverified: null,
  cautions: [],
  bundleKey: 'sensor-rr',
}

/** A right rear sensor found silent, replaced, torqued, checked by a second person, learned and driven 23 minutes. */
export const workedState: OrderState = {
  ...blankOrder('019bb200-0000-7000-8000-0000000000aa', '019bb200-0000-7000-8000-0000000000bb'),
  seq: 41,
  headHash: '3f2a91bc04de77aa5c01b6e2f9d8a7c63f2a91bc04de77aa5c01b6e2f9d8a7c6',
  marks: [
    { ...written(1, advisor), kind: 'order.opened', receivedAt: null, struck: null },
    { ...written(6), kind: 'wheel.checked', receivedAt: null, struck: null },
    { ...written(30, lead), kind: 'torque.checked', receivedAt: null, struck: null },
    {
      ...written(7),
      kind: 'wheel.checked',
      receivedAt: null,
      struck: { ...written(8), reason: 'wrong-wheel', words: null },
    },
  ],
  opened: {
    locationId: advisor,
    customerId: advisor,
    vehicleId: advisor,
    waitsHere: true,
    promisedAt: null,
    odometer: { value: 88_140, unit: 'mi' },
    odometerConfirmed: false,
    comebackOf: null,
    orderNumber: 'T-2602',
    written: written(1, advisor),
  },
  complaint: {
    words: digest('a'),
    reportedLight: 'flash-then-solid',
    events: [
      { kind: 'sealant', happened: false },
      { kind: 'rotation', happened: true, daysAgo: 7 },
    ],
    written: written(2, advisor),
  },
  sheet: { sheet: workedSheet, written: written(3, advisor) },
  surroundings: {
    surroundings: {
      outdoor: { value: 27, unit: 'F' },
      overnightLow: { value: 11, unit: 'F' },
      tires: 'cold',
      tire: null,
      altitudeFeet: 820,
    },
    minutesDriven: 5,
    lastSet: null,
    written: written(4),
  },
  arrival: {
    wheels: {
      LF: answering(6, 32.8, sensorIds.LF),
      RF: answering(7, 32.6, sensorIds.RF),
      RR: {
        mounted: 'road',
        gauge: { pressure: { value: 32.7, unit: 'psi' }, instrument: gauge, written: written(9) },
        sensor: { reading: { answer: 'silent', tries: 3 }, written: written(9) },
        notPossible: [],
      },
      LR: answering(10, 32.9, sensorIds.LR),
      SP: {
        mounted: null,
        gauge: null,
        sensor: null,
        notPossible: [{ field: 'gauge', why: 'cargo in the way' }],
      },
    },
    tires: {
      LF: {
        valve: 'clamp-in',
        stem: 'sound',
        treadDepth32nds: 7,
        tireAgeYears: 3,
        sensorAgeMonths: 110,
        sealantSeen: false,
        tireDamage: [],
        fastenerDamage: null,
        inside: null,
        written: written(11),
      },
    },
    module: arrivalModule,
    telltale: { lampCheck: 'lights', behavior: 'flash-then-solid', timed: null, written: written(13) },
  },
  diagnosis: {
    evidence: {
      units: { pressure: 'psi', temperature: 'F', altitude: 'ft' },
      notPossible: [{ field: 'wheels.SP.gauge', why: 'cargo in the way' }],
    },
    diagnosis: {
      ruleSet: '1',
      primary: 'sensor-silent',
      findings: [
        {
          code: 'sensor-silent',
          wheels: ['RR'],
          confidence: 'firm',
          kind: 'cause',
          because: [
            { field: 'wheels.RR.tries', value: 3, unit: 'tries', code: 'silent', values: { tries: 3 } },
          ],
          figures: { wheel: 'RR', tries: 3 },
          offers: ['sensor'],
          holds: [],
        },
        {
          code: 'under-placard',
          wheels: ['LF', 'RF', 'RR', 'LR'],
          confidence: 'firm',
          kind: 'note',
          because: [
            {
              field: 'wheels.RF.gauge',
              value: 32.6,
              unit: 'psi',
              code: 'cold-under-label',
              values: { cold: 32.6, label: 35, unit: 'psi' },
            },
          ],
          figures: { wheels: ['LF', 'RF', 'RR', 'LR'], value: 32.6, label: 35, difference: 2.4, unit: 'psi' },
          offers: ['pressure-set'],
          holds: [],
        },
      ],
      contradictions: [],
      unchecked: ['surroundings.lastSet', 'wheels.RR.stem'],
      nextChecks: [],
    },
    confirmed: { agrees: true, written: written(17) },
    outdated: false,
    written: written(16),
  },
  estimates: [
    {
      scope: workedScope,
      digest: digest('e'),
      diagnosisId: advisor,
      offers: digest('e'),
      findings: [],
      shown: [],
      written: written(19, advisor),
    },
  ],
  decisions: [
    {
      revision: 1,
      digest: digest('e'),
      answers: [],
      by: { relation: 'owner', name: digest('b') },
      consent: { channel: 'in-person', signature: { form: 'drawn', digest: digest('c') } },
      shown: digest('d'),
      language: 'en',
      agreesToElectronicRecord: true,
      wantsRemovedParts: false,
      written: written(21, advisor),
    },
  ],
  answers: { ...decision('sensor-rr', 'authorized'), ...decision('sensor-set', 'deferred') },
  plan: { plan: { planVersion: 1, steps: [fitStep] }, written: written(22) },
  closed: { [fitStep.stepKey]: { kind: 'sensor.fitted', value: null, written: written(25) } },
  work: {
    LF: setWheel(31, 'LF', 37.5, 37.6),
    RF: setWheel(32, 'RF', 37.5, 37.5),
    RR: {
      ...setWheel(33, 'RR', 37.5, 37.7),
      removed: { remark: null, written: written(23) },
      part: {
        stepKey: 'RR.sensor.draw',
        wheel: 'RR',
        partNumber: 'TS-315-C',
        lot: 'L2291',
        madeMonth: '2025-06',
        quantity: 1,
        matches: { frequencyMHz: 315, stem: 'clamp-in' },
        written: written(24),
      },
      fitted: {
        stepKey: 'RR.sensor.fit',
        wheel: 'RR',
        sensorId: '0A1B2CF7',
        valve: 'clamp-in',
        kitPart: 'KIT-C7',
        torque: { value: 62, unit: 'lbf·in' },
        written: written(25),
      },
      leak: { stepKey: 'RR.leak.check', wheel: 'RR', tight: true, where: null, written: written(26) },
      mounted: { cameFrom: 'RR', written: written(26) },
      rounds,
      checked: round(30, lead),
    },
    LR: setWheel(34, 'LR', 37.5, 37.5),
  },
  relearn: {
    stepKey: 'vehicle.relearn',
    method: 'stationary',
    confirmed: ['LF', 'RF', 'RR', 'LR'],
    result: 'learned',
    timed: { startedAt: '2026-01-12T16:20:00.000Z', seconds: 200 },
    written: written(35),
  },
  closing: {
    wheels: {
      LF: answering(36, 37.6, sensorIds.LF),
      RF: answering(37, 37.5, sensorIds.RF),
      RR: answering(38, 37.7, '0A1B2CF7'),
      LR: answering(39, 37.5, sensorIds.LR),
    },
    tires: {},
    module: {
      ...arrivalModule,
      phase: 'closing',
      ids: { ...sensorIds, RR: 'A1B2CF7' },
      codes: [],
      written: written(40),
    },
    telltale: {
      lampCheck: 'lights',
      behavior: 'off',
      timed: { startedAt: '2026-01-12T16:20:00.000Z', seconds: 125 },
      written: written(40),
    },
  },
  drives: [
    {
      stepKey: 'vehicle.proof-drive',
      minutes: 23,
      odometerOut: { value: 88_141, unit: 'mi' },
      odometerIn: { value: 88_156, unit: 'mi' },
      odometerConfirmed: false,
      lightAtEnd: 'off',
      lampCheckAfter: 'lights-and-goes-out',
      timed: { startedAt: '2026-01-12T16:20:00.000Z', seconds: 1420 },
      written: written(41),
    },
  ],
  photos: [
    {
      wheel: 'RR',
      stepKey: null,
      subject: 'stem',
      digest: digest('d'),
      byteLength: 240_000,
      written: written(14),
    },
  ],
}
