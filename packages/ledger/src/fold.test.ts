import { planJob } from '@bayledger/reckoning/job-plan/plan-job'
import { noDangers } from '@bayledger/reckoning/job-plan/tire-dangers'
import { describe, expect, it } from 'vitest'
import {
  answersOf,
  arrivalOf,
  decide,
  decisionOf,
  estimateOf,
  findingsOf,
  issuePlan,
  oneSensorJob,
  sealOf,
  stageWriters,
  tireOf,
  workUntil,
} from '../test-support/one-sensor-job.ts'
import type { OrderPen } from '../test-support/order-pen.ts'
import {
  before,
  changedEstimate,
  closeStep,
  dearer,
  lastOf,
  stepsOf,
} from '../test-support/refusals/setting.ts'
import { wordsOf } from '../test-support/seeded-ids.ts'
import {
  advisor,
  agreedBy,
  colleague,
  gauge,
  lead,
  otherTablet,
  technician,
  wrench,
  wrenchFacts,
} from '../test-support/shop.ts'
import { tarn } from '../test-support/tarn.ts'
import { authorizedBundles, unansweredBundles } from './questions/answers.ts'
import {
  handBackGate,
  openSteps,
  proofOf,
  readySteps,
  roadGate,
  sealGate,
  wheelStatus,
} from './questions/gates.ts'

const bay = { by: technician }
const desk = { by: advisor, deviceId: null }
const gaugeAt = (psi: number) => ({
  gauge: { pressure: { value: psi, unit: 'psi' as const }, instrument: gauge },
})

const isReady = (pen: OrderPen, stepKey: string): boolean =>
  readySteps(pen.state()).some((step) => step.stepKey === stepKey)

describe('a whole job', () => {
  it('is sealed, handed back and proven, with nothing left open', () => {
    const state = oneSensorJob('handed-back').state()
    expect(openSteps(state)).toEqual([])
    expect(sealGate(state)).toEqual([])
    expect(proofOf(state)).toEqual({ verdict: 'proven', minutes: 23 })
    expect(state.handedBack?.retorqueAdvised).toBe(true)
    expect(state.opened?.orderNumber).toBe('T-2602')
  })

  it('names the silent sensor as its cause and authorizes one bundle', () => {
    const state = oneSensorJob('decided').state()
    expect(state.diagnosis?.diagnosis.primary).toBe('sensor-silent')
    expect(authorizedBundles(state).map(({ bundleKey }) => bundleKey)).toEqual(['sensor.RR'])
  })

  it('holds no money: what was charged and paid is named by digests', () => {
    expect(JSON.stringify(oneSensorJob('sealed').state())).not.toMatch(/cents/i)
  })
})

describe('an absent member', () => {
  it('erases nothing that an earlier entry recorded', () => {
    const pen = oneSensorJob('checked')
    const { arrival: earlier } = pen.state()
    pen.write('wheel.checked', arrivalOf('LF', { gauge: null, sensor: null, mounted: null }), bay)
    pen.write(
      'tire.inspected',
      tireOf('LF', { valve: null, stem: null, treadDepth32nds: null, tireDamage: null }),
      bay,
    )
    pen.write(
      'telltale.observed',
      { phase: 'arrival', stepKey: null, lampCheck: null, behavior: null, timed: null },
      bay,
    )
    const { arrival } = pen.state()
    expect(arrival.wheels.LF).toEqual(earlier.wheels.LF)
    expect(arrival.tires.LF).toMatchObject({
      valve: 'clamp-in',
      stem: 'sound',
      treadDepth32nds: 7,
      tireDamage: [],
    })
    expect(arrival.telltale).toMatchObject({ lampCheck: 'lights', behavior: 'flash-then-solid' })
  })
})

describe('two devices that record one fact', () => {
  it('both stay on record until a person withdraws one', () => {
    const pen = oneSensorJob('checked')
    const second = pen.write('wheel.checked', arrivalOf('LF', gaugeAt(30)), {
      by: colleague,
      deviceId: otherTablet,
    })
    expect(pen.state().conflicts).toMatchObject([
      { fact: 'gauge', phase: 'arrival', wheel: 'LF', agree: false },
      { fact: 'sensor', phase: 'arrival', wheel: 'LF', agree: true },
    ])
    expect(pen.state().conflicts[0]?.records).toHaveLength(2)
    expect(sealGate(pen.state()).map(({ code }) => code)).toContain('recorded-twice')
    pen.strike(second.id, technician)
    expect(pen.state().conflicts).toEqual([])
    expect(pen.state().arrival.wheels.LF?.gauge?.pressure.value).toBe(32.8)
  })

  it('are no conflict when one device corrects itself', () => {
    const pen = oneSensorJob('checked')
    pen.write('wheel.checked', arrivalOf('LF', gaugeAt(30)), bay)
    expect(pen.state().conflicts).toEqual([])
    expect(pen.state().arrival.wheels.LF?.gauge?.pressure.value).toBe(30)
  })
})

describe('withdrawing', () => {
  it('leaves the entry in the margin with its reason and takes nothing else along', () => {
    const pen = oneSensorJob('worked')
    const before = pen.state()
    const target = before.work.LF?.pressure?.written.entryId ?? ''
    pen.strike(target, technician)
    const after = pen.state()
    expect(after.work.LF?.pressure ?? null).toBeNull()
    expect(after.marks.find(({ entryId }) => entryId === target)?.struck?.reason).toBe('wrong-value')
    expect(Object.keys(before.closed).filter((key) => !after.closed[key])).toEqual(['LF.pressure.set'])
  })

  it('of a reading outdates the findings that were made from it, and a new reading must be judged again', () => {
    const pen = oneSensorJob('confirmed')
    pen.strike(lastOf(pen, 'module.read'), technician)
    expect(pen.state().diagnosis?.outdated).toBe(true)
    expect(sealGate(pen.state()).map(({ code }) => code)).toContain('findings-unconfirmed')
  })

  it('of a sealed round opens the road gate until it is torqued and checked again', () => {
    const pen = oneSensorJob('worked')
    const again = pen.state().work.RR?.rounds.again?.written.entryId ?? ''
    pen.strike(again, technician, lead)
    expect(roadGate(pen.state()).map(({ code }) => code)).toEqual(['wheel-untorqued'])
    expect(closeStep(pen, 'RR.studs.torque-again')).toMatchObject({ admitted: true })
    expect(wheelStatus(pen.state(), 'RR')).toBe('unchecked')
    expect(isReady(pen, 'RR.studs.second-check')).toBe(true)
  })

  it('of the entry that took a wheel off does not put the wheel on', () => {
    const pen = before('RR.wheel.on')
    pen.strike(lastOf(pen, 'wheel.removed'), technician, lead)
    expect(wheelStatus(pen.state(), 'RR')).toBe('off')
    expect(roadGate(pen.state()).map(({ code }) => code)).toContain('wheel-off')
  })

  it('of the fitting needs every round again', () => {
    const pen = oneSensorJob('worked')
    pen.strike(lastOf(pen, 'wheel.mounted'), technician)
    expect(wheelStatus(pen.state(), 'RR')).toBe('off')
    expect(closeStep(pen, 'RR.wheel.on')).toMatchObject({ admitted: true })
    expect(wheelStatus(pen.state(), 'RR')).toBe('untorqued')
    expect(openSteps(pen.state()).map(({ stepKey }) => stepKey)).toEqual([
      'RR.studs.torque-half',
      'RR.studs.torque-full',
      'RR.studs.torque-again',
      'RR.studs.second-check',
    ])
  })
})

describe('a wheel that is fitted once more', () => {
  it('keeps every round of its earlier fitting, the second person’s too', () => {
    const pen = oneSensorJob('worked')
    pen.strike(lastOf(pen, 'wheel.mounted'), technician)
    closeStep(pen, 'RR.wheel.on')
    const work = pen.state().work.RR
    expect(work?.rounds).toEqual({})
    expect(work?.checked).toBeNull()
    expect(work?.earlierFittings.map(({ round }) => round)).toEqual(['half', 'full', 'again', 'check'])
  })
})

describe('a nut that moves', () => {
  it('on the last round sends the wheel back to the round at the figure', () => {
    const pen = before('RR.studs.torque-again')
    expect(closeStep<'studs.torqued'>(pen, 'RR.studs.torque-again', { moved: [3] })).toMatchObject({
      admitted: true,
    })
    expect(pen.state().closed['RR.studs.torque-again']).toBeUndefined()
    expect(isReady(pen, 'RR.studs.torque-full')).toBe(true)
    expect(pen.state().work.RR?.overtaken.map(({ moved }) => moved)).toEqual([[], [3]])
    workUntil(pen, () => false)
    expect(proofOf(pen.state()).verdict).toBe('proven')
  })

  it('under the second person sends it back too, and whoever torqued before may still not check', () => {
    const pen = before('RR.studs.second-check')
    closeStep<'torque.checked'>(pen, 'RR.studs.second-check', { moved: [1] }, { by: lead })
    expect(wheelStatus(pen.state(), 'RR')).toBe('untorqued')
    expect(pen.state().work.RR?.overtaken.at(-1)).toMatchObject({ round: 'check', moved: [1] })
    closeStep(pen, 'RR.studs.torque-full', {}, { by: colleague })
    closeStep(pen, 'RR.studs.torque-again', {}, { by: colleague })
    expect(closeStep(pen, 'RR.studs.second-check', {}, { by: technician })).toMatchObject({
      code: 'SECOND_PERSON_IS_DOER',
    })
    expect(closeStep(pen, 'RR.studs.second-check', {}, { by: lead })).toMatchObject({ admitted: true })
    expect(wheelStatus(pen.state(), 'RR')).toBe('secured')
  })
})

describe('a check that is sealed on the tablet of whoever torqued', () => {
  it('is of the person whose PIN sealed it, wherever the order says who did what', () => {
    const pen = before('RR.studs.second-check')
    const checked = closeStep<'torque.checked'>(pen, 'RR.studs.second-check', { checkedBy: agreedBy(lead) })
    expect(checked).toMatchObject({ admitted: true })
    const { work, marks } = pen.state()
    expect(work.RR?.checked?.written.by).toEqual({ kind: 'staff', staffId: lead.id })
    expect(marks.at(-1)).toMatchObject({ kind: 'torque.checked', by: { staffId: lead.id } })
    expect(wheelStatus(pen.state(), 'RR')).toBe('secured')
  })
})

describe('a wrench that only the register doubts', () => {
  const doubtful = {
    ...bay,
    facts: { wrenches: new Map([[wrench.instrumentId, wrenchFacts({ quarantined: true })]]) },
  }

  it('is admitted with a hold that keeps the road shut until the round is withdrawn and done again', () => {
    const pen = before('RR.studs.torque-again')
    expect(closeStep(pen, 'RR.studs.torque-again', {}, doubtful)).toMatchObject({ admitted: true })
    workUntil(pen, (key) => key === 'vehicle.proof.drive')
    expect(roadGate(pen.state()).map(({ code }) => code)).toEqual(['wrench-doubtful'])
    pen.strike(lastOf(pen, 'studs.torqued'), technician, lead)
    workUntil(pen, (key) => key === 'vehicle.proof.drive')
    expect(roadGate(pen.state())).toEqual([])
  })

  it('is settled as well by a later round that overtakes the doubtful one', () => {
    const pen = before('RR.studs.torque-full')
    closeStep(pen, 'RR.studs.torque-full', {}, doubtful)
    expect(pen.state().holds).toHaveLength(1)
    closeStep<'studs.torqued'>(pen, 'RR.studs.torque-again', { moved: [2] })
    expect(pen.state().holds).toEqual([])
  })
})

describe('answers', () => {
  it('come bundle by bundle, and what was put off may be answered later', () => {
    const pen = oneSensorJob('shown')
    pen.write('estimate.decided', decisionOf(pen, answersOf(pen, 'deferred')), desk)
    expect(unansweredBundles(pen.state())).toEqual([])
    decide(pen, 'authorized')
    expect(authorizedBundles(pen.state())).toHaveLength(1)
  })

  it('hold for a newer version only while the bundle is the same to the cent', () => {
    const pen = oneSensorJob('decided')
    pen.write('estimate.issued', estimateOf(pen), desk)
    expect(authorizedBundles(pen.state())).toHaveLength(1)
    pen.write('estimate.issued', changedEstimate(pen, dearer), desk)
    expect(authorizedBundles(pen.state())).toEqual([])
    expect(unansweredBundles(pen.state())).toHaveLength(1)
  })
})

describe('a new plan', () => {
  it('keeps the steps that put a wheel back, whatever the customer answers while it is off', () => {
    const pen = before('RR.sensor.fit')
    pen.write('estimate.issued', changedEstimate(pen, dearer), desk)
    decide(pen, 'declined')
    const rest = openSteps(pen.state())
    expect(rest.map(({ code }) => code)).toEqual([
      'put-wheel-on',
      'lower-to-touching',
      'torque-studs',
      'torque-studs',
      'torque-studs',
      'check-torque',
      'lower-fully',
    ])
    workUntil(pen, () => false)
    expect(roadGate(pen.state())).toEqual([])
  })

  it('opens the relearn and the proof again when a sensor more is to be fitted', () => {
    const pen = oneSensorJob('worked')
    const more = stepsOf(pen).map((step) =>
      step.stepKey === 'LF.pressure.set' ? { ...step, waitsFor: ['LF.leak.find'] } : step,
    )
    const [first] = planJob(
      tarn,
      [{ work: { kind: 'find-leak', wheel: 'LF' }, bundleKey: 'sensor.RR' }],
      2,
      noDangers,
    ).steps
    if (!first) throw new Error('a leak is found by a step')
    pen.write(
      'plan.issued',
      { plan: { planVersion: 2, steps: [first, ...more] }, decisionId: null },
      { by: 'system' },
    )
    expect(isReady(pen, 'LF.leak.find')).toBe(true)
    expect(openSteps(pen.state()).map(({ stepKey }) => stepKey)).toEqual(
      expect.arrayContaining(['LF.pressure.set', 'vehicle.relearn.done', 'vehicle.proof.drive']),
    )
    expect(pen.state().closed['RR.wheel.off']).toBeDefined()
  })
})

describe('after the seal', () => {
  it('an addendum names the report that it supersedes, even after the keys are back', () => {
    const pen = oneSensorJob('handed-back')
    const addendum = pen.attempt('report.sealed', sealOf(pen, 'R-2602-1'), {
      ...desk,
      given: { reportNumber: 'R-2602-2' },
    })
    expect(addendum).toMatchObject({ admitted: true })
    expect(pen.state().reports.map(({ supersedes }) => supersedes)).toEqual([null, 'R-2602-1'])
  })
})

describe('findings that hold work', () => {
  it('let a tire be filled once it was seen sound inside', () => {
    const pen = oneSensorJob('written-up')
    stageWriters.checked(pen)
    pen.write(
      'wheel.checked',
      arrivalOf('RR', { ...gaugeAt(9), sensor: { answer: 'silent', tries: 3 } }),
      bay,
    )
    stageWriters.confirmed(pen)
    pen.write(
      'stop.told',
      {
        diagnosisId: lastOf(pen, 'diagnosis.issued'),
        codes: ['run-low-damage-possible'],
        channel: 'in-person',
        answer: wordsOf('yes'),
      },
      desk,
    )
    stageWriters.estimated(pen)
    decide(pen, 'authorized')
    workUntil(pen, () => false)
    expect(handBackGate(pen.state())).toEqual([])
    expect(pen.state().work.RR?.pressure?.asLeft.value).toBeGreaterThan(35)
  })

  it('must be told again to the customer when the same stop concerns another wheel', () => {
    const pen = oneSensorJob('checked')
    pen.write('tire.inspected', tireOf('LF', { stem: 'leaks' }), bay)
    const { id } = pen.write('diagnosis.issued', findingsOf(pen), bay)
    pen.write(
      'stop.told',
      { diagnosisId: id, codes: ['stem-leaking'], channel: 'in-person', answer: wordsOf('yes') },
      desk,
    )
    expect(pen.state().stopsTold['stem-leaking']?.wheels).toEqual(['LF'])
  })
})

describe('the plan of a bay', () => {
  it('is issued again with each decision under the next version', () => {
    const pen = oneSensorJob('decided')
    issuePlan(pen, lastOf(pen, 'estimate.decided'))
    expect(pen.state().plan?.plan.planVersion).toBe(2)
  })
})
