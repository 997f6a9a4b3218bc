import { describe, expect, it } from 'vitest'
import { issuePlan, oneSensorJob, stageWriters, tireOf, workUntil } from '../test-support/one-sensor-job.ts'
import type { OrderPen } from '../test-support/order-pen.ts'
import { answerRest, offer, refuse } from '../test-support/parked.ts'
import { bay, closeStep, lastOf } from '../test-support/refusals/setting.ts'
import { handBackGate, openSteps, roadGate, sealGate, wheelStatus } from './questions/gates.ts'
import { nextSteps } from './questions/next-steps.ts'
import { planLacksSpare, spareWheel } from './questions/spare-on.ts'
import { mayDrive } from './questions/verdicts.ts'

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
