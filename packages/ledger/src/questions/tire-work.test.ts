import { planJob } from '@bayledger/reckoning/job-plan/plan-job'
import { noDangers } from '@bayledger/reckoning/job-plan/tire-dangers'
import { describe, expect, it } from 'vitest'
import {
  arrivalOf,
  decide,
  findingsOf,
  issuePlan,
  oneSensorJob,
  stageWriters,
  tireOf,
  workUntil,
} from '../../test-support/one-sensor-job.ts'
import type { OrderPen } from '../../test-support/order-pen.ts'
import {
  bay,
  before,
  closeStep,
  desk,
  lastOf,
  replanned,
  stepsOf,
} from '../../test-support/refusals/setting.ts'
import { wordsOf } from '../../test-support/seeded-ids.ts'
import { technician } from '../../test-support/shop.ts'
import { tarn } from '../../test-support/tarn.ts'
import { openSteps, readySteps, roadGate } from './gates.ts'
import { planLacksCare } from './tire-dangers.ts'
import { whyNot } from './why-not.ts'

const setAside = (pen: OrderPen, stepKey: string) =>
  pen.write('step.set_aside', { stepKey, reason: wordsOf('why') }, bay)
const stepAt = (pen: OrderPen, stepKey: string) => {
  const step = pen.state().plan?.plan.steps.find((one) => one.stepKey === stepKey)
  if (!step) throw new RangeError(`no step ${stepKey}`)
  return step
}
const shutBy = (pen: OrderPen, stepKey: string) => whyNot(pen.state(), stepAt(pen, stepKey))

/** The right rear tire was at 9 psi when it came; everything is authorized. */
const runLow = (): OrderPen => {
  const pen = oneSensorJob('written-up', 'run-low')
  stageWriters.checked(pen)
  const gauge = { ...arrivalOf('RR').gauge, pressure: { value: 9, unit: 'psi' } } as ReturnType<
    typeof arrivalOf
  >['gauge']
  pen.write('wheel.checked', arrivalOf('RR', { gauge, sensor: { answer: 'silent', tries: 3 } }), {
    by: technician,
  })
  stageWriters.confirmed(pen)
  const diagnosisId = lastOf(pen, 'diagnosis.issued')
  const told = { diagnosisId, codes: ['run-low-damage-possible'], channel: 'in-person' as const }
  pen.write('stop.told', { ...told, answer: wordsOf('yes') }, desk)
  stageWriters.estimated(pen)
  decide(pen, 'authorized')
  return pen
}

describe('a tire that was run low', () => {
  it('gets no air, for a leak search or for seating, before it was seen sound inside', () => {
    const pen = runLow()
    const codes = stepsOf(pen)
      .filter(({ wheel }) => wheel === 'RR')
      .map(({ code }) => code)
    expect(codes.indexOf('find-leak-after-look')).toBeGreaterThan(codes.indexOf('look-inside'))
    workUntil(pen, (key) => key === 'RR.tire.inside')
    expect(shutBy(pen, 'RR.leak.find')).toMatchObject({ code: 'STEP_OUT_OF_ORDER' })
    for (const stepKey of ['RR.leak.find', 'RR.tire.seat', 'RR.tire.inflate']) {
      const step = { ...stepAt(pen, stepKey), waitsFor: [] }
      expect(whyNot(pen.state(), step), stepKey).toMatchObject({
        code: 'WORK_HELD_BY_FINDING',
        values: { gate: 'inflation', finding: 'run-low-damage-possible' },
      })
    }
    closeStep<'tire.inspected'>(pen, 'RR.tire.inside', { inside: 'run-low-damage' })
    expect(shutBy(pen, 'RR.leak.find')).toMatchObject({ code: 'WHEEL_PARKED' })
  })
})

describe('a plan in force', () => {
  it('lacks care once a tire that is still to be opened is found to hold sealant, until it is issued again', () => {
    const pen = before('RR.wheel.off')
    expect(planLacksCare(pen.state())).toBe(false)
    pen.write('tire.inspected', tireOf('RR', { sealantSeen: true }), bay)
    pen.write('diagnosis.issued', findingsOf(pen), bay)
    expect(planLacksCare(pen.state())).toBe(true)
    issuePlan(pen, lastOf(pen, 'estimate.decided'))
    expect(planLacksCare(pen.state())).toBe(false)
    expect(stepAt(pen, 'RR.tire.open').waitsFor).toEqual(['RR.tire.purge'])
  })
})

describe('a tire that stays closed', () => {
  it('is not worked on, and its wheel goes back on', () => {
    const pen = before('RR.tire.open')
    setAside(pen, 'RR.tire.open')
    expect(readySteps(pen.state()).map(({ stepKey }) => stepKey)).toEqual(['RR.wheel.on'])
    for (const stepKey of ['RR.tire.inside', 'RR.sensor.fit', 'RR.tire.seat'])
      expect(shutBy(pen, stepKey), stepKey).toMatchObject({
        code: 'STEP_OUT_OF_ORDER',
        values: { first: { code: 'open-tire' } },
      })
    workUntil(pen, () => false)
    expect(openSteps(pen.state())).toEqual([])
    expect(roadGate(pen.state())).toEqual([])
  })
})

describe('a vehicle that was lowered', () => {
  it('is lifted again for more work, and what is finished on its wheels stays finished', () => {
    const pen = replanned([{ kind: 'service-stem', wheel: 'RR', valve: 'clamp-in' }])
    workUntil(pen, (key) => key === 'vehicle.last.look')
    expect(pen.state().closed['vehicle.lift.down']).toBeDefined()
    const bundleKey = stepsOf(pen).find(({ stepKey }) => stepKey === 'RR.wheel.off')?.bundleKey ?? ''
    const works = (['RR', 'LF'] as const).map((wheel) => ({
      work: { kind: 'service-stem', wheel, valve: 'clamp-in' } as const,
      bundleKey,
    }))
    const plan = planJob(tarn, works, 3, noDangers)
    pen.write('plan.issued', { plan, decisionId: null }, { by: 'system' })
    const open = openSteps(pen.state()).map(({ stepKey }) => stepKey)
    expect(open).toEqual(expect.arrayContaining(['vehicle.lift.up', 'LF.wheel.off', 'vehicle.lift.touching']))
    expect(open.filter((key) => key.startsWith('RR.') && !key.startsWith('RR.closing'))).toEqual([])
    expect(closeStep(pen, 'vehicle.lift.up')).toMatchObject({ admitted: true })
    expect(closeStep(pen, 'LF.wheel.off')).toMatchObject({ admitted: true })
  })

  it('and whose finished wheel an earlier plan never filled by a step of its own is not opened again', () => {
    const pen = replanned([{ kind: 'service-stem', wheel: 'RR', valve: 'clamp-in' }])
    const today = stepsOf(pen)
    const earlier = today
      .filter(({ code }) => !/^(lift|lower|inflate)-/.test(code))
      .map((step) => ({
        ...step,
        waitsFor: step.waitsFor
          .filter((key) => !key.startsWith('vehicle.lift.'))
          .map((key) => (key === 'RR.tire.inflate' ? 'RR.tire.core' : key)),
      }))
    pen.write('plan.issued', { plan: { planVersion: 3, steps: earlier }, decisionId: null }, { by: 'system' })
    workUntil(pen, (key) => key === 'vehicle.last.look')
    pen.write('plan.issued', { plan: { planVersion: 4, steps: today }, decisionId: null }, { by: 'system' })
    for (const key of ['RR.tire.leak', 'RR.wheel.on', 'RR.studs.second-check'])
      expect(pen.state().closed[key], key).toBeDefined()
    expect(roadGate(pen.state())).toEqual([])
  })
})
