import type { Work } from '@bayledger/reckoning/estimate'
import { planJob } from '@bayledger/reckoning/job-plan/plan-job'
import { noDangers } from '@bayledger/reckoning/job-plan/tire-dangers'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import { roadPositions } from '@bayledger/reckoning/wheels'
import { describe, expect, it } from 'vitest'
import { withFullSizeSpare } from '../../reckoning/test-support/utility-sheet.ts'
import { answersOf, decisionOf, issuePlan, oneSensorJob, workUntil } from '../test-support/one-sensor-job.ts'
import { bay, changedEstimate, closeStep, desk, lastOf, replanned } from '../test-support/refusals/setting.ts'
import { tarn } from '../test-support/tarn.ts'
import { authorizedBundles } from './questions/answers.ts'
import {
  handBackGate,
  insecureWheels,
  openSteps,
  proofOf,
  readySteps,
  roadGate,
  wheelStatus,
  wheelsThatCameOff,
} from './questions/gates.ts'
import { nextMoves } from './questions/moves.ts'

const fiveAlike = withFullSizeSpare(tarn)
const onEachWheel = (workOn: (wheel: (typeof roadPositions)[number]) => Work): Work[] =>
  roadPositions.map(workOn)

describe('a job', () => {
  it.each<readonly [string, readonly Work[], SpecificationSheet, readonly string[]]>([
    ['that sets pressures', [{ kind: 'set-pressures' }], tarn, []],
    [
      'that finds and repairs a leak',
      [
        { kind: 'find-leak', wheel: 'LF' },
        { kind: 'service-stem', wheel: 'LF', valve: 'clamp-in' },
      ],
      tarn,
      ['LF'],
    ],
    ['with new tires', onEachWheel((wheel) => ({ kind: 'fit-tire', wheel })), tarn, roadPositions],
    ['with the other season’s wheels', [{ kind: 'swap-wheels' }], tarn, roadPositions],
    ['that rotates', [{ kind: 'rotate', pattern: 'rearward-cross' }], tarn, roadPositions],
    ['that rotates five', [{ kind: 'rotate', pattern: 'five-forward-cross' }], fiveAlike, roadPositions],
    ['on the spare alone', [{ kind: 'service-stem', wheel: 'SP', valve: 'plain' }], tarn, []],
  ])(
    '%s is worked through to its proof, and every wheel that came off is checked',
    (_, works, sheet, off) => {
      const pen = replanned(works, sheet)
      workUntil(pen, () => false)
      const state = pen.state()
      expect(openSteps(state)).toEqual([])
      expect(wheelsThatCameOff(state)).toEqual(off)
      expect(insecureWheels(state)).toEqual([])
      expect(roadGate(state)).toEqual([])
      expect(proofOf(state)).toEqual({ verdict: 'proven', minutes: 23 })
    },
  )
})

describe('a rotation', () => {
  it('writes down from where each wheel came, and keeps the road shut until the last is checked', () => {
    const pen = replanned([{ kind: 'rotate', pattern: 'rearward-cross' }])
    workUntil(pen, (key) => key === 'LR.studs.second-check')
    expect(roadGate(pen.state()).map(({ code, wheel }) => [code, wheel])).toEqual([['wheel-unchecked', 'LR']])
    const from = roadPositions.map((wheel) => pen.state().work[wheel]?.mounted?.cameFrom)
    expect(from).toEqual(['LR', 'RR', 'LF', 'RF'])
    expect(pen.state().closed['vehicle.rotation.tires']).toMatchObject({
      kind: 'step.closed',
      value: { arrows: [], sizes: {} },
    })
    expect(pen.state().closed['LR.wheel.off']).toMatchObject({ kind: 'wheel.removed', value: null })
  })

  it('that the tires refuse is told to the desk, and goes on by a pattern that they allow', () => {
    const pen = replanned([{ kind: 'rotate', pattern: 'rearward-cross' }])
    const key = 'vehicle.rotation.tires'
    const seen = { value: { arrows: [...roadPositions], sizes: {} } }
    expect(closeStep<'step.closed'>(pen, key, seen)).toMatchObject({
      code: 'ROTATION_NOT_ALLOWED',
      values: { why: 'tires', allowed: ['front-to-back'] },
    })
    expect(closeStep(pen, 'LF.wheel.off')).toMatchObject({ code: 'STEP_OUT_OF_ORDER' })
    pen.write('trouble.found', { stepKey: key, wheel: null, what: 'other', words: null }, bay)
    expect(nextMoves(pen.state(), pen.now())[0]).toMatchObject({ mover: 'desk', code: 'wheel-parked' })

    const bundleKey = authorizedBundles(pen.state())[0]?.bundleKey ?? ''
    const works = [{ bundleKey, work: { kind: 'rotate', pattern: 'front-to-back' } as const }]
    pen.write('plan.issued', { plan: planJob(tarn, works, 3, noDangers), decisionId: null }, { by: 'system' })
    pen.write('step.closed', { stepKey: key, ...seen }, bay)
    expect(pen.state().closed[key]).toBeDefined()
  })

  it('that goes by another pattern after the tires were seen has them seen again', () => {
    const pen = replanned([{ kind: 'rotate', pattern: 'front-to-back' }])
    const key = 'vehicle.rotation.tires'
    const arrows = { value: { arrows: [...roadPositions], sizes: {} } }
    pen.write('step.closed', { stepKey: key, ...arrows }, bay)
    const planFor = (pattern: 'front-to-back' | 'cross', planVersion: number) => {
      const bundleKey = authorizedBundles(pen.state())[0]?.bundleKey ?? ''
      const plan = planJob(tarn, [{ bundleKey, work: { kind: 'rotate', pattern } }], planVersion, noDangers)
      pen.write('plan.issued', { plan, decisionId: null }, { by: 'system' })
    }
    planFor('front-to-back', 3)
    expect(pen.state().closed[key]).toBeDefined()
    pen.write('step.closed', { stepKey: 'vehicle.lift.up', value: null }, bay)
    planFor('cross', 4)
    expect(pen.state().closed[key]).toBeUndefined()
    expect(closeStep(pen, 'LF.wheel.off')).toMatchObject({
      code: 'STEP_OUT_OF_ORDER',
      values: { first: { stepKey: key } },
    })
    expect(closeStep<'step.closed'>(pen, key, arrows)).toMatchObject({ code: 'ROTATION_NOT_ALLOWED' })
  })

  it('that is no longer wanted lets the wheels back where they were, and still wants them safe', () => {
    const pen = replanned([{ kind: 'rotate', pattern: 'rearward-cross' }])
    workUntil(pen, (key) => key === 'LF.wheel.on')
    const planned = pen.state().plan?.plan
    expect(planned?.steps.find(({ stepKey }) => stepKey === 'LF.wheel.on')?.comesFrom).toBe('LR')
    pen.write('plan.issued', { plan: { planVersion: 3, steps: [] }, decisionId: null }, { by: 'system' })
    expect(closeStep<'wheel.mounted'>(pen, 'LF.wheel.on', { cameFrom: 'LF' })).toMatchObject({
      admitted: true,
    })
    workUntil(pen, () => false)
    expect(roadPositions.map((wheel) => wheelStatus(pen.state(), wheel))).toEqual(
      roadPositions.map(() => 'secured'),
    )
  })
})

describe('the torque looked at after some miles', () => {
  const torqueAgain = () => {
    const pen = oneSensorJob('confirmed')
    const works = onEachWheel((wheel) => ({ kind: 'torque-again', wheel }) as Work)
    pen.write(
      'estimate.issued',
      changedEstimate(pen, (estimate) => ({
        ...estimate,
        bundles: estimate.bundles.map((bundle) => ({ ...bundle, works })),
      })),
      desk,
    )
    pen.write('estimate.decided', decisionOf(pen, answersOf(pen, 'authorized')), desk)
    issuePlan(pen, lastOf(pen, 'estimate.decided'))
    return pen
  }

  it('goes round again while a nut moves', () => {
    const pen = torqueAgain()
    closeStep<'studs.torqued'>(pen, 'LF.studs.torque-again', { moved: [3] })
    expect(readySteps(pen.state()).map(({ stepKey }) => stepKey)).toContain('LF.studs.torque-again')
    closeStep<'studs.torqued'>(pen, 'LF.studs.torque-again')
    expect(openSteps(pen.state()).map(({ stepKey }) => stepKey)).not.toContain('LF.studs.torque-again')
    expect(pen.state().work.LF?.overtaken.map(({ moved }) => moved)).toEqual([[3]])
  })

  it('takes no wheel off, shuts no road and leaves nothing that the light must prove', () => {
    const pen = torqueAgain()
    workUntil(pen, () => false)
    expect(openSteps(pen.state())).toEqual([])
    expect(wheelsThatCameOff(pen.state())).toEqual([])
    expect(handBackGate(pen.state())).toEqual([])
    expect(proofOf(pen.state())).toEqual({ verdict: 'nothing-to-prove' })
  })
})
