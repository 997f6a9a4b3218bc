import type { AdmitFacts, PartOnStock } from '../../src/admit/facts.ts'
import type { PayloadOf } from '../../src/registry.ts'
import { arrivalOf, findingsOf, oneSensorJob, tireOf, workUntil } from '../one-sensor-job.ts'
import { wordsOf } from '../seeded-ids.ts'
import { gauge, lead } from '../shop.ts'
import { bay, before, closeStep, desk, type Refusals, stepsOf } from './setting.ts'

export const wheelsRefusals: Refusals<
  | 'WHEEL_NOT_OFF'
  | 'WHEEL_ALREADY_OFF'
  | 'WHEEL_HELD_BY_FINDING'
  | 'WORK_HELD_BY_FINDING'
  | 'WHEEL_NOT_TORQUED'
  | 'WHEEL_NOT_SECURED'
  | 'SENSOR_BROKEN_OPEN'
  | 'SENSOR_FREQUENCY_WRONG'
  | 'SENSOR_ID_TAKEN'
  | 'SENSOR_ID_DIFFERS'
  | 'PART_DOES_NOT_MATCH'
  | 'PRESSURE_TARGET_DIFFERS'
  | 'PRESSURE_OVER_SIDEWALL'
  | 'PRESSURE_NOT_ON_TARGET'
  | 'ROAD_GATE_CLOSED'
  | 'BALANCE_UNCLEAR'
  | 'ODOMETER_BACKWARDS'
  | 'DRIVE_LONGER_THAN_ORDER'
> = {
  WHEEL_NOT_OFF: [
    [
      'a wheel put on that never came off',
      () => {
        const pen = before('RR.wheel.off')
        for (const { stepKey, wheel, height, closedBy } of stepsOf(pen))
          if (
            wheel === 'RR' &&
            height === 'lifted' &&
            !['wheel.mounted', 'tire.inspected'].includes(closedBy)
          )
            pen.write('step.set_aside', { stepKey, reason: wordsOf('why') }, bay)
        return closeStep(pen, 'RR.wheel.on')
      },
      { wheel: 'RR' },
    ],
  ],
  WHEEL_ALREADY_OFF: [
    [
      'a wheel that comes off twice',
      () => {
        const pen = before('RR.wheel.off')
        const planned = stepsOf(oneSensorJob('decided'))
        closeStep(pen, 'RR.wheel.off')
        const steps = planned.map((step) =>
          step.stepKey === 'RR.wheel.off' ? { ...step, stepKey: 'RR.wheel.off-again', waitsFor: [] } : step,
        )
        pen.write('plan.issued', { plan: { planVersion: 2, steps }, decisionId: null }, { by: 'system' })
        return closeStep(pen, 'RR.wheel.off-again')
      },
      { wheel: 'RR' },
    ],
  ],
  WHEEL_HELD_BY_FINDING: [
    [
      'a wheel whose sensor was asked once when the findings were made',
      () => {
        const pen = before('RR.wheel.off')
        pen.write('wheel.checked', arrivalOf('RR', { sensor: { answer: 'silent', tries: 1 } }), bay)
        pen.write('diagnosis.issued', findingsOf(pen), bay)
        pen.write('wheel.checked', arrivalOf('RR'), bay)
        return closeStep(pen, 'RR.wheel.off')
      },
      { wheel: 'RR', finding: 'retry-silent-wheel' },
    ],
  ],
  WORK_HELD_BY_FINDING: [
    [
      'a pressure set on a tire that was driven low',
      () => {
        const pen = before('LF.pressure.set')
        pen.write(
          'wheel.checked',
          arrivalOf('LF', { gauge: { pressure: { value: 9, unit: 'psi' }, instrument: gauge } }),
          bay,
        )
        pen.write('diagnosis.issued', findingsOf(pen), bay)
        return closeStep(pen, 'LF.pressure.set')
      },
      { gate: 'inflation', wheel: 'LF', finding: 'run-low-damage-possible' },
    ],
    [
      'a tire opened that may hold sealant',
      () => {
        const pen = before('RR.tire.open')
        pen.write('tire.inspected', tireOf('RR', { sealantSeen: true }), bay)
        pen.write('diagnosis.issued', findingsOf(pen), bay)
        return closeStep(pen, 'RR.tire.open')
      },
      { gate: 'bead-break', wheel: 'RR', finding: 'sealant-inside' },
    ],
  ],
  WHEEL_NOT_TORQUED: [
    [
      'a second check of a wheel that was not torqued',
      () => {
        const pen = before('RR.studs.torque-again')
        pen.write('step.set_aside', { stepKey: 'RR.studs.torque-again', reason: wordsOf('why') }, bay)
        return closeStep(pen, 'RR.studs.second-check', {}, { by: lead })
      },
      { why: 'not-torqued', wheel: 'RR' },
    ],
    [
      'a round on a wheel that is off',
      () => {
        const pen = before('RR.wheel.on')
        for (const stepKey of ['RR.wheel.on', 'vehicle.lift.touching'])
          pen.write('step.set_aside', { stepKey, reason: wordsOf('why') }, bay)
        return closeStep(pen, 'RR.studs.torque-half')
      },
      { why: 'off', wheel: 'RR' },
    ],
    [
      'a vehicle lowered while a wheel is off',
      () => {
        const pen = before('RR.wheel.on')
        pen.write('step.set_aside', { stepKey: 'RR.wheel.on', reason: wordsOf('why') }, bay)
        return closeStep(pen, 'vehicle.lift.touching')
      },
      { why: 'lowering', wheel: 'RR' },
    ],
  ],
  WHEEL_NOT_SECURED: [
    [
      'an order withdrawn with a wheel off',
      () =>
        before('RR.tire.open').attempt(
          'order.withdrawn',
          { reason: 'customer', words: wordsOf('why') },
          desk,
        ),
      { wheel: 'RR' },
    ],
    [
      'an order refused with a wheel unchecked',
      () =>
        before('RR.studs.second-check').attempt(
          'order.refused',
          { reason: 'out-of-scope', words: wordsOf('why') },
          desk,
        ),
      { wheel: 'RR' },
    ],
  ],
  SENSOR_BROKEN_OPEN: [
    [
      'an order withdrawn after we broke a sensor',
      () => {
        const pen = oneSensorJob('checked')
        pen.write('sensor.broken', { wheel: 'LF', how: 'the shovel caught it' }, bay)
        return pen.attempt('order.withdrawn', { reason: 'customer', words: wordsOf('why') }, desk)
      },
      { wheel: 'LF' },
    ],
  ],
  SENSOR_FREQUENCY_WRONG: [
    [
      'a sensor of another frequency programmed',
      () =>
        closeStep<'sensor.programmed'>(before('RR.sensor.program'), 'RR.sensor.program', {
          frequencyMHz: 433.92,
        }),
      { foundMHz: 433.92, wantedMHz: 315 },
    ],
  ],
  SENSOR_ID_TAKEN: [
    [
      'an ID of another wheel, in another notation',
      () =>
        closeStep<'sensor.programmed'>(before('RR.sensor.program'), 'RR.sensor.program', {
          sensorId: 'a1b2c10',
        }),
      { wheel: 'LF' },
    ],
    [
      'an ID of another vehicle',
      () =>
        closeStep(
          before('RR.sensor.program'),
          'RR.sensor.program',
          {},
          { ...bay, facts: { idsOnOtherVehicles: new Set(['0A1B2CF7']) } },
        ),
      { wheel: null },
    ],
    [
      'a sensor fitted that lives elsewhere',
      () => closeStep<'sensor.fitted'>(before('RR.sensor.fit'), 'RR.sensor.fit', { sensorId: '0A1B2C10' }),
      { wheel: 'LF' },
    ],
  ],
  SENSOR_ID_DIFFERS: [
    [
      'a sensor fitted that is not the one programmed',
      () => closeStep<'sensor.fitted'>(before('RR.sensor.fit'), 'RR.sensor.fit', { sensorId: '77777777' }),
      { programmed: '2CF7', found: '7777' },
    ],
  ],
  PART_DOES_NOT_MATCH: [
    [
      'a part for another frequency',
      () =>
        closeStep<'part.drawn'>(before('RR.sensor.match'), 'RR.sensor.match', {
          matches: { frequencyMHz: 433.92, stem: 'clamp-in' },
        }),
      { refusals: [{ aspect: 'frequency', foundMHz: [433.92], wantedMHz: 315 }] },
    ],
    [
      'a part with another stem',
      () =>
        closeStep<'part.drawn'>(before('RR.sensor.match'), 'RR.sensor.match', {
          matches: { frequencyMHz: 315, stem: 'snap-in' },
        }),
      { refusals: [{ aspect: 'stem', found: 'snap-in', wanted: ['clamp-in'] }] },
    ],
    [
      'a part that has lain on the shelf for more than two years',
      () => closeStep<'part.drawn'>(before('RR.sensor.match'), 'RR.sensor.match', { madeMonth: '2023-12' }),
      { refusals: [{ aspect: 'age', age: 'past-shelf-limit' }] },
    ],
    [
      "a part that the shop's register holds back",
      () =>
        closeStep(
          before('RR.sensor.match'),
          'RR.sensor.match',
          {},
          { ...bay, facts: { stock: stockOf({ heldBack: 'Programmed for another vehicle.' }) } },
        ),
      { refusals: [{ aspect: 'state', state: 'held-back', why: 'Programmed for another vehicle.' }] },
    ],
    [
      'a part without marks that the stock list knows to be another',
      () =>
        closeStep<'part.drawn'>(
          before('RR.sensor.match'),
          'RR.sensor.match',
          { matches: { frequencyMHz: null, stem: null }, madeMonth: null },
          {
            ...bay,
            facts: { stock: stockOf({ frequenciesMHz: [433.92], stem: 'snap-in', madeMonth: '2023-11' }) },
          },
        ),
      {
        refusals: [
          { aspect: 'frequency', foundMHz: [433.92], wantedMHz: 315 },
          { aspect: 'stem', found: 'snap-in', wanted: ['clamp-in'] },
          { aspect: 'age', age: 'past-shelf-limit' },
        ],
      },
    ],
  ],
  PRESSURE_TARGET_DIFFERS: [
    [
      'a target for another temperature',
      () =>
        closeStep<'pressure.set'>(before('LF.pressure.set'), 'LF.pressure.set', {
          target: { psi: 35, placardPsi: 35, quality: 'measured', capped: false },
        }),
      { why: 'changed' },
    ],
  ],
  PRESSURE_OVER_SIDEWALL: [
    [
      'a tire left over what its sidewall allows',
      () =>
        closeStep<'pressure.set'>(before('LF.pressure.set'), 'LF.pressure.set', {
          asLeft: { value: 51.5, unit: 'psi' },
        }),
      { wheel: 'LF', found: { value: 51.5, unit: 'psi' }, maximumPsi: 51 },
    ],
  ],
  PRESSURE_NOT_ON_TARGET: [
    [
      'a tire left under its target',
      () =>
        closeStep<'pressure.set'>(before('LF.pressure.set'), 'LF.pressure.set', {
          asLeft: { value: 35, unit: 'psi' },
        }),
      { side: 'under', found: { value: 35, unit: 'psi' }, targetPsi: 37.5, overPsi: 1.5 },
    ],
  ],
  ROAD_GATE_CLOSED: [
    [
      'a drive with the second check set aside',
      () => {
        const pen = before('RR.studs.second-check')
        pen.write(
          'step.set_aside',
          { stepKey: 'RR.studs.second-check', reason: wordsOf('nobody there') },
          bay,
        )
        pen.write('step.set_aside', { stepKey: 'vehicle.relearn.done', reason: wordsOf('later') }, bay)
        workUntil(pen, (key) => key === 'vehicle.proof.drive')
        return closeStep(pen, 'vehicle.proof.drive')
      },
      { reason: { code: 'wheel-unchecked', wheel: 'RR', values: {} } },
    ],
    [
      'a relearn on the road with a wheel unchecked',
      () => {
        const pen = before('RR.studs.second-check')
        pen.write(
          'step.set_aside',
          { stepKey: 'RR.studs.second-check', reason: wordsOf('nobody there') },
          bay,
        )
        workUntil(pen, (key) => key === 'vehicle.proof.drive')
        pen.write('step.set_aside', { stepKey: 'vehicle.proof.drive', reason: wordsOf('why') }, bay)
        return closeStep(pen, 'vehicle.relearn.done')
      },
      { reason: { code: 'wheel-unchecked', wheel: 'RR', values: {} } },
    ],
  ],
  DRIVE_LONGER_THAN_ORDER: [
    [
      'a drive longer than the order is old',
      () =>
        closeStep<'drive.done'>(before('vehicle.proof.drive'), 'vehicle.proof.drive', {
          minutes: 600,
        }),
      { minutes: 600 },
    ],
  ],
  BALANCE_UNCLEAR: [
    ['what balancing left, in words', () => balanced('a little'), { why: 'in-words' }],
    [
      'more on a side than a balancer shows, balanced again or not',
      () => balanced({ ...noneLeft, inner: 25, balancedAgain: true }),
      { why: 'impossible', side: 'inner', found: 25, most: 12 },
    ],
    [
      'more on a side than a car’s wheel may have, balanced once',
      () => balanced({ ...noneLeft, outer: 0.75 }),
      { why: 'over', side: 'outer', found: 0.75, limitGrams: 10 },
    ],
  ],
  ODOMETER_BACKWARDS: [
    [
      'an odometer that runs backward',
      () =>
        closeStep<'drive.done'>(before('vehicle.proof.drive'), 'vehicle.proof.drive', {
          odometerIn: { value: 88_140, unit: 'mi' },
        }),
    ],
  ],
}

const noneLeft = { shows: 'figures', unit: 'oz', inner: 0, outer: 0, balancedAgain: false } as const
const balanced = (value: PayloadOf<'step.closed'>['value']) =>
  closeStep<'step.closed'>(before('RR.tire.balance'), 'RR.tire.balance', { value })

const stockOf = (change: Partial<PartOnStock>): AdmitFacts['stock'] =>
  new Map([
    [
      'TS-315-C',
      {
        frequenciesMHz: [315],
        protocols: null,
        stem: 'clamp-in',
        holeMillimeters: null,
        ratedPsi: null,
        madeMonth: null,
        shelfMonths: null,
        heldBack: null,
        ...change,
      },
    ],
  ])
