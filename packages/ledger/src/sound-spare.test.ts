import { describe, expect, it } from 'vitest'
import {
  answersOf,
  decisionOf,
  issuePlan,
  oneSensorJob,
  stageWriters,
  tireOf,
  workUntil,
} from '../test-support/one-sensor-job.ts'
import type { OrderPen } from '../test-support/order-pen.ts'
import { answerRest, offer, refuse } from '../test-support/parked.ts'
import { bay, closeStep, desk, lastOf } from '../test-support/refusals/setting.ts'
import { lead, technician } from '../test-support/shop.ts'
import { closingOf } from '../test-support/step-payload.ts'
import { handBackGate, openSteps, readySteps, roadGate, sealGate, wheelStatus } from './questions/gates.ts'
import { nextSteps } from './questions/next-steps.ts'
import { planLacksSpare, spareWheel } from './questions/spare-on.ts'
import { openTroubles } from './questions/troubles.ts'
import { mayDrive } from './questions/verdicts.ts'
import { whyNot } from './questions/why-not.ts'

/** A bulge at the left front; the customer declines all work, and the vehicle is to leave on its spare. */
const refused = (leaves: 'sound-spare' | 'as-it-is' = 'sound-spare'): OrderPen => {
  const pen = oneSensorJob('checked', 'spare')
  pen.write('tire.inspected', tireOf('LF', { tireDamage: ['bulge'] }), bay)
  offer(pen)
  stageWriters.shown(pen)
  answerRest(pen, 'declined')
  refuse(pen, leaves, 'tire-unsafe')
  return pen
}
const planned = (pen: OrderPen): OrderPen => {
  issuePlan(pen, lastOf(pen, 'estimate.decided'))
  return pen
}
const codes = (reasons: readonly { readonly code: string }[]): string[] => reasons.map(({ code }) => code)

describe('a vehicle that leaves on its spare', () => {
  it('does not leave before the spare is on', () => {
    const pen = refused()
    expect(spareWheel(pen.state())).toBe('LF')
    expect(planLacksSpare(pen.state())).toBe(true)
    expect(codes(handBackGate(pen.state()))).toEqual(['spare-not-on'])
    expect(planLacksSpare(refused('as-it-is').state())).toBe(false)
    expect(handBackGate(refused('as-it-is').state())).toEqual([])
  })

  it('gets the steps for it and no others: out, lift, off, on, the torque rounds, the check, its own pressure', () => {
    const pen = planned(refused())
    expect(pen.state().plan?.plan.steps.map(({ stepKey }) => stepKey)).toEqual([
      'SP.wheel.out',
      'vehicle.lift.up',
      'LF.wheel.off',
      'LF.wheel.on',
      'vehicle.lift.touching',
      'LF.studs.torque-half',
      'LF.studs.torque-full',
      'LF.studs.torque-again',
      'LF.studs.second-check',
      'vehicle.lift.down',
      'SP.pressure.set',
      'vehicle.last.look',
    ])
    expect(pen.state().plan?.plan.steps.map(({ bundleKey }) => bundleKey)).toEqual(Array(12).fill(null))
    workUntil(pen, (key) => key === 'LF.wheel.on')
    expect(closeStep(pen, 'LF.wheel.on', { cameFrom: 'LF' })).toMatchObject({ admitted: false })
    expect(codes(handBackGate(pen.state()))).toContain('wheel-off')
    workUntil(pen, (key) => key === 'LF.studs.second-check')
    expect(codes(handBackGate(pen.state()))).toEqual(['wheel-unchecked'])
  })

  it('may be handed back once the spare is torqued and checked, and is never driven by us', () => {
    const pen = planned(refused())
    workUntil(pen, () => false)
    const state = pen.state()
    expect(wheelStatus(state, 'LF')).toBe('secured')
    expect(openSteps(state)).toEqual([])
    expect(handBackGate(state)).toEqual([])
    expect(sealGate(state)).toEqual([])
    expect(codes(roadGate(state))).toEqual(['wheel-parked', 'stop-open'])
    expect(mayDrive(state)).toBe('on-the-spare')
    expect(nextSteps(state, '2026-01-12')[0]).toEqual({
      code: 'on-the-spare',
      wheel: 'LF',
      spare: 'temporary',
    })
  })

  it('whose wheel is on, torqued and not checked must not be driven', () => {
    const pen = planned(refused())
    workUntil(pen, (key) => key === 'LF.studs.second-check')
    expect(mayDrive(pen.state())).toBe('do-not-drive')
  })
})

/** Decides these bundles; the plan that follows is written with the decision. */
const decides = (pen: OrderPen, answer: 'authorized' | 'declined', ...bundleKeys: string[]): void => {
  const answers = answersOf(pen, answer).filter(({ bundleKey }) => bundleKeys.includes(bundleKey))
  issuePlan(pen, pen.write('estimate.decided', decisionOf(pen, answers), desk).id)
}

/** Closes whatever may be closed, however much of the plan stays shut. */
const workAsFarAsPossible = (pen: OrderPen): void => {
  const next = () => readySteps(pen.state()).find((step) => whyNot(pen.state(), step) === null)
  for (let step = next(); step; step = next()) {
    const { kind, payload } = closingOf(pen.state(), step)
    pen.write(kind, payload, { by: step.closedBy === 'torque.checked' ? lead : technician })
  }
}

/** The search for the leak was agreed on; the look inside finds this hole, and the customer leaves on the spare. */
const leftWithHole = (millimeters: number, finding: string): OrderPen => {
  const pen = oneSensorJob('checked', 'spare')
  pen.write('tire.inspected', tireOf('LF', { tireDamage: ['puncture'] }), bay)
  offer(pen)
  stageWriters.shown(pen)
  decides(pen, 'declined', 'sensor.RR')
  decides(pen, 'authorized', 'leak.LF')
  workUntil(pen, (key) => key === 'LF.tire.inside')
  const hole = { place: 'crown' as const, millimeters, degrees: 10, overlapsRepair: false }
  closeStep<'tire.inspected'>(pen, 'LF.tire.inside', { punctures: [hole] })
  offer(pen)
  stageWriters.shown(pen)
  answerRest(pen, 'declined')
  refuse(pen, 'sound-spare', finding)
  issuePlan(pen, lastOf(pen, 'estimate.decided'))
  workAsFarAsPossible(pen)
  return pen
}

describe('a vehicle whose opened tire stays with the shop while it leaves on its spare', () => {
  it.each([
    ['repairable', 5, 'puncture-found'],
    ['beyond repair', 8, 'puncture-not-repairable'],
  ] as const)(
    'owes pressures and the last look, and nothing of the wheel that is off or of a drive: %s',
    (_, millimeters, finding) => {
      const pen = leftWithHole(millimeters, finding)
      const state = pen.state()
      expect(wheelStatus(state, 'LF')).toBe('secured')
      for (const key of [
        'RF.pressure.set',
        'RR.pressure.set',
        'LR.pressure.set',
        'SP.pressure.set',
        'vehicle.last.look',
      ])
        expect(state.closed[key]).toBeDefined()
      expect(state.plan?.plan.steps.map(({ stepKey }) => stepKey)).not.toContain('LF.pressure.set')
      expect(openSteps(state).map(({ stepKey }) => stepKey)).toEqual(
        expect.arrayContaining(['LF.tire.seat', 'LF.closing.read', 'vehicle.proof.drive']),
      )
      expect(handBackGate(state)).toEqual([])
      expect(sealGate(state)).toEqual([])
    },
  )

  it('still owes the last look before it is made', () => {
    const pen = oneSensorJob('checked', 'spare')
    pen.write('tire.inspected', tireOf('LF', { tireDamage: ['bulge'] }), bay)
    offer(pen)
    stageWriters.shown(pen)
    answerRest(pen, 'declined')
    refuse(pen, 'sound-spare', 'tire-unsafe')
    issuePlan(pen, lastOf(pen, 'estimate.decided'))
    workUntil(pen, (key) => key === 'vehicle.last.look')
    expect(codes(sealGate(pen.state()))).toEqual(['step-open'])
  })
})

describe('a Yes after the spare was fitted', () => {
  const opens = (pen: OrderPen) => openSteps(pen.state()).map(({ stepKey }) => stepKey)

  it.each([
    ['the repair of its hole', 5, 'puncture-found', 'puncture.LF'],
    ['another tire', 8, 'puncture-not-repairable', 'tire.LF'],
  ] as const)(
    'to %s takes the spare off again and goes on with the tire as it was opened',
    (_, millimeters, finding, bundleKey) => {
      const pen = leftWithHole(millimeters, finding)
      decides(pen, 'authorized', bundleKey)
      expect(spareWheel(pen.state())).toBeNull()
      expect(opens(pen)).toEqual(
        expect.arrayContaining([
          'vehicle.lift.up',
          'LF.wheel.off',
          'LF.wheel.on',
          'LF.studs.torque-full',
          'LF.studs.second-check',
        ]),
      )
      expect(opens(pen)).not.toContain('LF.tire.open')
      expect(opens(pen)).not.toContain('LF.tire.inside')
      expect(closeStep(pen, 'LF.wheel.on')).toMatchObject({ admitted: false })
      workUntil(pen, () => false)
      expect(openSteps(pen.state())).toEqual([])
      expect(openTroubles(pen.state())).toEqual([])
      expect(pen.state().work.LF?.mounted?.cameFrom).toBe('LF')
      expect(wheelStatus(pen.state(), 'LF')).toBe('secured')
      expect(roadGate(pen.state())).toEqual([])
      expect(sealGate(pen.state())).toEqual([])
    },
  )

  it('to another tire for one that was never opened takes the spare off again', () => {
    const pen = planned(refused())
    workUntil(pen, () => false)
    decides(pen, 'authorized', 'tire.LF')
    expect(opens(pen)).toEqual(expect.arrayContaining(['LF.wheel.off', 'LF.tire.open', 'LF.wheel.on']))
    workUntil(pen, () => false)
    expect(pen.state().work.LF?.mounted?.cameFrom).toBe('LF')
    expect(sealGate(pen.state())).toEqual([])
  })

  it('to a sensor of another wheel leaves the spare where it is', () => {
    const pen = planned(refused())
    workUntil(pen, () => false)
    decides(pen, 'authorized', 'sensor.RR')
    expect(opens(pen)).not.toContain('LF.wheel.off')
    expect(opens(pen)).not.toContain('LF.wheel.on')
    expect(opens(pen)).toContain('RR.wheel.off')
  })
})
