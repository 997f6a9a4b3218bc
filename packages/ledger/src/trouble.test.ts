import type { Work } from '@bayledger/reckoning/estimate'
import { describe, expect, it } from 'vitest'
import {
  answersOf,
  arrivalOf,
  decide,
  decisionOf,
  handBack,
  issuePlan,
  oneSensorJob,
  sealOf,
  stageWriters,
  tireOf,
  workUntil,
} from '../test-support/one-sensor-job.ts'
import type { OrderPen } from '../test-support/order-pen.ts'
import { answerRest, judgeAgain, offer, offerAndAgree, refuse } from '../test-support/parked.ts'
import { bay, before, changedEstimate, closeStep, desk, lastOf } from '../test-support/refusals/setting.ts'
import { wordsOf } from '../test-support/seeded-ids.ts'
import { agreedBy, lead } from '../test-support/shop.ts'
import { newestBundles } from './questions/answers.ts'
import { handBackGate, roadGate, sealGate, wheelStatus } from './questions/gates.ts'
import { nextMoves } from './questions/moves.ts'
import { openTroubles } from './questions/troubles.ts'
import { mayDrive } from './questions/verdicts.ts'
import { whyNot } from './questions/why-not.ts'
import type { PayloadOf } from './registry.ts'

type Found = PayloadOf<'trouble.found'>

const find = (pen: OrderPen, what: Found['what'], change: Partial<Found> = {}) =>
  pen.write('trouble.found', { stepKey: null, wheel: 'RR', what, words: null, ...change }, bay)

/** The customer agrees to what was agreed on before and to these works besides. */
const agreeOn = (pen: OrderPen, works: readonly Work[]): void => {
  judgeAgain(pen)
  const withThem = changedEstimate(pen, (estimate) => ({
    ...estimate,
    bundles: estimate.bundles.map((bundle, index) =>
      index === 0 ? { ...bundle, works: [...bundle.works, ...works] } : bundle,
    ),
  }))
  pen.write('estimate.issued', withThem, desk)
  decide(pen, 'authorized')
}

/** The server plans anew, from what was answered and refused. */
const issueAgain = (pen: OrderPen): void => issuePlan(pen, lastOf(pen, 'estimate.decided'))

/** Why each step of a wheel that is still open may not be closed, by its key. */
const shutAt = (pen: OrderPen, wheel: string): string[] =>
  (pen.state().plan?.plan.steps ?? [])
    .filter((step) => step.wheel === wheel && !pen.state().closed[step.stepKey])
    .map((step) => whyNot(pen.state(), step)?.code ?? step.stepKey)

describe('a stud that breaks while a wheel comes off', () => {
  it('parks the wheel, closes the road, and is the desk’s move', () => {
    const pen = before('RR.wheel.off')
    find(pen, 'stud', { stepKey: 'RR.wheel.off', words: wordsOf('snapped') })
    const state = pen.state()
    expect(new Set(shutAt(pen, 'RR'))).toEqual(new Set(['STEP_OUT_OF_ORDER', 'WHEEL_PARKED']))
    expect(closeStep(pen, 'RR.wheel.off')).toMatchObject({
      code: 'WHEEL_PARKED',
      values: { wheel: 'RR', what: 'stud', waitsFor: 'answer' },
    })
    expect(roadGate(state)[0]).toEqual({
      code: 'wheel-parked',
      wheel: 'RR',
      values: { what: 'stud', waitsFor: 'answer' },
    })
    expect(nextMoves(state, pen.now())[0]).toMatchObject({ mover: 'desk', code: 'wheel-parked', wheel: 'RR' })
  })

  it('raises the finding again, is offered with a price, and a Yes brings its step before the wheel goes on', () => {
    const pen = before('RR.wheel.off')
    find(pen, 'stud', { stepKey: 'RR.wheel.off' })
    expect(pen.state().diagnosis?.outdated).toBe(true)
    offerAndAgree(pen)
    const state = pen.state()
    expect(state.diagnosis?.diagnosis.findings).toContainEqual(
      expect.objectContaining({ code: 'wheel-not-secure', wheels: ['RR'], stop: 'do-not-drive' }),
    )
    expect(state.estimates.at(-1)?.scope.bundles).toContainEqual(
      expect.objectContaining({
        bundleKey: 'fastener.RR',
        works: [{ kind: 'repair-fastener', wheel: 'RR' }],
      }),
    )
    expect(openTroubles(state)).toMatchObject([{ what: 'stud', waitsFor: 'repair' }])
    const codes = () => nextMoves(pen.state(), pen.now()).map(({ code }) => code)
    expect(codes()).toContain('stop-untold')
    workUntil(pen, (key) => key === 'RR.studs.repair')
    expect(wheelStatus(pen.state(), 'RR')).toBe('off')
    expect(closeStep(pen, 'RR.studs.repair', { value: 'one stud and nut renewed' }).admitted).toBe(true)
    expect(openTroubles(pen.state())).toEqual([])
    workUntil(pen, () => false)
    expect(wheelStatus(pen.state(), 'RR')).toBe('secured')
    expect(roadGate(pen.state())).toEqual([])
    // Nobody calls the customer about a danger that work has removed.
    expect(codes()).not.toContain('stop-untold')
  })

  it('makes an earlier torque count no more', () => {
    const pen = before('RR.pressure.set')
    expect(wheelStatus(pen.state(), 'RR')).toBe('secured')
    find(pen, 'thread')
    expect(wheelStatus(pen.state(), 'RR')).toBe('untorqued')
    expect(pen.state().closed['RR.wheel.off']).toBeUndefined()
    offerAndAgree(pen)
    workUntil(pen, (key) => key === 'RR.studs.repair')
    expect(wheelStatus(pen.state(), 'RR')).toBe('off')
  })

  it('is withdrawn like other evidence, and the work goes on', () => {
    const pen = before('RR.wheel.off')
    const { id } = find(pen, 'stud')
    pen.strike(id, lead)
    expect(openTroubles(pen.state())).toEqual([])
    expect(pen.state().diagnosis?.outdated).toBe(false)
    expect(closeStep(pen, 'RR.wheel.off').admitted).toBe(true)
  })
})

describe('damage inside a tire', () => {
  it.each(['run-low-damage', 'cord', 'separation'] as const)(
    'stops seating, air and torque when the look inside finds it (%s), and a second look cannot undo it',
    (inside) => {
      const pen = before('RR.tire.inside')
      closeStep<'tire.inspected'>(pen, 'RR.tire.inside', { inside })
      expect(new Set(shutAt(pen, 'RR'))).toEqual(new Set(['STEP_OUT_OF_ORDER', 'WHEEL_PARKED']))
      pen.write('tire.inspected', tireOf('RR', { when: 'inside', inside: 'sound' }), bay)
      expect(openTroubles(pen.state())).toHaveLength(1)
      expect(closeStep(pen, 'RR.sensor.fit')).toMatchObject({ code: 'WHEEL_PARKED' })
    },
  )

  it('stays until another tire was agreed on, matched and mounted', () => {
    const pen = before('RR.tire.inside')
    find(pen, 'run-low-inside', { stepKey: 'RR.tire.inside' })
    judgeAgain(pen)
    expect(pen.state().diagnosis?.diagnosis.findings).toContainEqual(
      expect.objectContaining({ code: 'tire-unsafe', wheels: ['RR'], offers: ['tire'] }),
    )
    const works = [{ kind: 'fit-tire' as const, wheel: 'RR' as const }]
    agreeOn(pen, works)
    expect(openTroubles(pen.state())).toMatchObject([{ waitsFor: 'part' }])
    workUntil(pen, (key) => key === 'RR.tire.match')
    expect(closeStep(pen, 'RR.tire.match').admitted).toBe(true)
    expect(openTroubles(pen.state())).toMatchObject([{ waitsFor: 'repair' }])
    workUntil(pen, (key) => key === 'RR.tire.seat')
    expect(closeStep(pen, 'RR.tire.seat').admitted).toBe(true)
    expect(openTroubles(pen.state())).toEqual([])
  })

  it('found again in the tire that was mounted needs another one', () => {
    const pen = before('RR.tire.inside')
    find(pen, 'cut')
    agreeOn(pen, [{ kind: 'fit-tire', wheel: 'RR' }])
    workUntil(pen, (key) => key === 'RR.wheel.on')
    find(pen, 'separation', { stepKey: 'RR.wheel.on' })
    expect(openTroubles(pen.state()).map(({ waitsFor }) => waitsFor)).toEqual(['part', 'part'])
    expect(closeStep(pen, 'RR.wheel.on')).toMatchObject({ admitted: false })
  })
})

describe('cord that is seen on arrival', () => {
  it('keeps every other work on that wheel shut', () => {
    const pen = oneSensorJob('checked')
    pen.write('tire.inspected', tireOf('RR', { tireDamage: ['cord-showing'] }), bay)
    offer(pen)
    const bundles = newestBundles(pen.state())
    const answers = answersOf(pen, 'declined').map((given) =>
      bundles.find(({ bundleKey }) => bundleKey === given.bundleKey)?.title === 'sensor'
        ? { ...given, answer: 'authorized' as const }
        : given,
    )
    issuePlan(pen, pen.write('estimate.decided', decisionOf(pen, answers), desk).id)
    expect(closeStep(pen, 'RR.sensor.match')).toMatchObject({ code: 'WHEEL_PARKED' })
    expect(closeStep(pen, 'RR.studs.torque-half')).toMatchObject({ admitted: false })
  })
})

describe('a part that turned out to be wrong', () => {
  it('waits for another one, and what was done with it is done again', () => {
    const pen = before('RR.sensor.fit')
    find(pen, 'wrong-part', { stepKey: 'RR.sensor.fit' })
    expect(openTroubles(pen.state())).toMatchObject([{ waitsFor: 'part' }])
    expect(closeStep(pen, 'RR.sensor.program')).toMatchObject({ admitted: false })
    expect(closeStep(pen, 'RR.sensor.match').admitted).toBe(true)
    expect(openTroubles(pen.state())).toEqual([])
    workUntil(pen, () => false)
    expect(roadGate(pen.state())).toEqual([])
  })
})

describe('a sensor that goes silent', () => {
  it('is evidence for the findings, whatever it said on arrival', () => {
    const pen = before('RR.wheel.off')
    find(pen, 'silent', { wheel: 'LF' })
    judgeAgain(pen)
    expect(pen.state().diagnosis?.diagnosis.findings).toContainEqual(
      expect.objectContaining({ code: 'sensor-silent', wheels: ['LF', 'RR'] }),
    )
  })
})

describe('a refusal on record', () => {
  it('opens the hand-back of a towed vehicle alone, never the wheel’s work or our own drive', () => {
    const pen = before('RR.wheel.on')
    find(pen, 'stud', { stepKey: 'RR.wheel.on' })
    judgeAgain(pen)
    refuse(pen, 'towed', 'wheel-not-secure')
    const state = pen.state()
    expect(handBackGate(state)).toEqual([])
    expect(roadGate(state).map(({ code }) => code)).toEqual(['wheel-off', 'wheel-parked', 'stop-open'])
    expect(closeStep(pen, 'RR.wheel.on')).toMatchObject({ code: 'WHEEL_PARKED' })
    expect(sealGate(state).filter(({ wheel }) => wheel === 'RR')).toEqual([])
  })

  it('keeps a vehicle here that would leave as it is with its wheel off', () => {
    const pen = before('RR.wheel.on')
    find(pen, 'stud')
    judgeAgain(pen)
    refuse(pen, 'as-it-is', 'wheel-not-secure')
    expect(handBackGate(pen.state())).toMatchObject([{ code: 'wheel-off', wheel: 'RR' }])
  })

  it('lets the sound spare onto the hub of a damaged tire, never the damaged wheel', () => {
    const pen = before('RR.wheel.on')
    find(pen, 'cord')
    judgeAgain(pen)
    refuse(pen, 'sound-spare', 'tire-unsafe')
    expect(closeStep(pen, 'RR.wheel.on', { cameFrom: 'RR' })).toMatchObject({ code: 'WHEEL_PARKED' })
    expect(handBackGate(pen.state()).map(({ code }) => code)).toContain('spare-not-on')
    issueAgain(pen)
    expect(closeStep(pen, 'RR.wheel.on', { cameFrom: 'RR' })).toMatchObject({ code: 'STEP_ON_OTHER_WHEEL' })
    workUntil(pen, (key) => key === 'vehicle.last.look')
    expect(wheelStatus(pen.state(), 'RR')).toBe('secured')
    expect(handBackGate(pen.state())).toEqual([])
    expect(mayDrive(pen.state())).toBe('on-the-spare')
    expect(roadGate(pen.state()).map(({ code }) => code)).toContain('wheel-parked')
  })

  it('of one wheel does not cover the same finding at another', () => {
    const pen = before('RR.wheel.on')
    find(pen, 'stud')
    judgeAgain(pen)
    refuse(pen, 'towed', 'wheel-not-secure')
    find(pen, 'stud', { wheel: 'LF' })
    judgeAgain(pen)
    expect(handBackGate(pen.state()).map(({ wheel }) => wheel)).toContain('LF')
    expect(nextMoves(pen.state(), pen.now())).toContainEqual(
      expect.objectContaining({ code: 'wheel-parked', wheel: 'LF' }),
    )
  })

  it('seals and hands back a towed vehicle', () => {
    const pen = before('RR.wheel.on')
    find(pen, 'stud')
    offer(pen)
    stageWriters.shown(pen)
    answerRest(pen, 'declined')
    refuse(pen, 'towed', 'wheel-not-secure')
    for (const step of pen.state().plan?.plan.steps ?? [])
      if (!pen.state().closed[step.stepKey] && step.wheel !== 'RR')
        pen.write('step.set_aside', { stepKey: step.stepKey, reason: wordsOf('refused') }, bay)
    expect(sealGate(pen.state())).toEqual([])
    pen.write('report.sealed', sealOf(pen), desk)
    const back = pen.attempt('order.handed_back', { ...handBack, releaseAgreedBy: agreedBy(lead) }, desk)
    expect(back.admitted).toBe(true)
  })
})

describe('a wheel whose readings were taken', () => {
  it('is not parked by a reading', () => {
    const pen = before('RR.wheel.off')
    pen.write('wheel.checked', arrivalOf('RR'), bay)
    expect(openTroubles(pen.state())).toEqual([])
  })
})
