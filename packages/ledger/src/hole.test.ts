import { describe, expect, it } from 'vitest'
import { seal } from '../test-support/money.ts'
import { oneSensorJob, pricedOf, stageWriters, tireOf, workUntil } from '../test-support/one-sensor-job.ts'
import type { OrderPen } from '../test-support/order-pen.ts'
import { answerRest, judgeAgain, offer, offerAndAgree, refuse } from '../test-support/parked.ts'
import { bay, before, closeStep, desk } from '../test-support/refusals/setting.ts'
import { prices } from '../test-support/tarn.ts'
import { answerTo, newestBundles, unansweredBundles } from './questions/answers.ts'
import { openedTires } from './questions/authorized-works.ts'
import { estimateIsMissing } from './questions/estimate-is-missing.ts'
import { handBackGate, roadGate, wheelStatus } from './questions/gates.ts'
import { nextMoves } from './questions/moves.ts'
import { openTroubles } from './questions/troubles.ts'
import { estimatePayload } from './subjects/consent/estimate-payload.ts'

describe('a hole that the look inside measures', () => {
  const holed = (millimeters: number): OrderPen => {
    const pen = before('RR.tire.inside')
    const hole = { place: 'crown' as const, millimeters, degrees: 10, overlapsRepair: false }
    closeStep<'tire.inspected'>(pen, 'RR.tire.inside', { punctures: [hole] })
    judgeAgain(pen)
    return pen
  }
  const found = (pen: OrderPen) => pen.state().diagnosis?.diagnosis.findings.map(({ code }) => code)

  it('is evidence for the findings: over 6 mm it needs another tire', () => {
    expect(found(holed(6))).toContain('puncture-found')
    expect(found(holed(7))).toContain('puncture-not-repairable')
  })

  it('parks the wheel until its repair, which has a price only now, is agreed on and done', () => {
    const pen = holed(5)
    expect(closeStep(pen, 'RR.sensor.fit')).toMatchObject({
      code: 'WHEEL_PARKED',
      values: { what: 'hole', waitsFor: 'answer' },
    })
    expect(nextMoves(pen.state(), pen.now())[0]).toMatchObject({ mover: 'desk', code: 'wheel-parked' })
    stageWriters.estimated(pen)
    stageWriters.shown(pen)
    expect(unansweredBundles(pen.state())).toMatchObject([
      { bundleKey: 'puncture.RR', works: [{ kind: 'repair-puncture', wheel: 'RR' }] },
    ])
    expect(pen.state().plan?.plan.steps.map(({ code }) => code)).not.toContain('repair-leak')
    answerRest(pen, 'authorized')
    expect(openTroubles(pen.state())).toMatchObject([{ what: 'hole', waitsFor: 'repair' }])
    expect(closeStep(pen, 'RR.tire.seat')).toMatchObject({ admitted: false })
    workUntil(pen, (key) => key === 'RR.leak.repair')
    expect(closeStep(pen, 'RR.leak.repair', { value: 'plug and patch together' }).admitted).toBe(true)
    expect(openTroubles(pen.state())).toEqual([])
    workUntil(pen, () => false)
    expect(roadGate(pen.state())).toEqual([])
  })

  it('beyond repair waits for another tire, and no plug comes into the plan', () => {
    const pen = holed(7)
    expect(openTroubles(pen.state())).toMatchObject([{ what: 'hole-beyond-repair', waitsFor: 'answer' }])
    stageWriters.estimated(pen)
    stageWriters.shown(pen)
    expect(newestBundles(pen.state()).map(({ bundleKey }) => bundleKey)).toContain('tire.RR')
    answerRest(pen, 'authorized')
    expect(pen.state().plan?.plan.steps.map(({ code }) => code)).not.toContain('repair-leak')
    expect(openTroubles(pen.state())).toMatchObject([{ what: 'hole-beyond-repair', waitsFor: 'part' }])
    workUntil(pen, () => false)
    expect(openTroubles(pen.state())).toEqual([])
    expect(roadGate(pen.state())).toEqual([])
  })

  it('is judged with every other one: two are priced as two, and never where their repair units would overlap', () => {
    const one = { place: 'crown' as const, millimeters: 4, degrees: 0, overlapsRepair: false }
    const lookedAt = (unitsOverlap: boolean): OrderPen => {
      const pen = before('RR.tire.inside')
      const punctures = [one, { ...one, fromOthers: { millimeters: 60, unitsOverlap } }]
      closeStep<'tire.inspected'>(pen, 'RR.tire.inside', { punctures })
      judgeAgain(pen)
      return pen
    }
    expect(openTroubles(lookedAt(true).state())).toMatchObject([{ what: 'hole-beyond-repair' }])
    expect(found(lookedAt(true))).toContain('puncture-not-repairable')
    const pen = lookedAt(false)
    expect(openTroubles(pen.state())).toMatchObject([{ what: 'hole' }])
    expect(openedTires(pen.state()).repairable).toEqual([{ wheel: 'RR', holes: 2 }])
  })

  it('that is measured only in part keeps the look inside open', () => {
    const pen = before('RR.tire.inside')
    const hole = { place: 'crown' as const, millimeters: null, degrees: null, overlapsRepair: null }
    closeStep<'tire.inspected'>(pen, 'RR.tire.inside', { punctures: [hole] })
    expect(closeStep(pen, 'RR.sensor.fit')).toMatchObject({ code: 'STEP_OUT_OF_ORDER' })
    const measured = { ...hole, millimeters: 4, degrees: 0, overlapsRepair: false }
    expect(closeStep<'tire.inspected'>(pen, 'RR.tire.inside', { punctures: [measured] }).admitted).toBe(true)
    expect(openTroubles(pen.state())).toMatchObject([{ what: 'hole' }])
  })

  it('that is left as it is opens the hand-back of a towed vehicle alone', () => {
    const pen = holed(5)
    stageWriters.estimated(pen)
    stageWriters.shown(pen)
    answerRest(pen, 'declined')
    refuse(pen, 'towed', 'puncture-found')
    expect(handBackGate(pen.state())).toEqual([])
    expect(roadGate(pen.state()).map(({ code }) => code)).toContain('wheel-parked')
    expect(closeStep(pen, 'RR.sensor.fit')).toMatchObject({ code: 'WHEEL_PARKED' })
  })
})

describe('a nail that is seen on arrival', () => {
  const nail = (place: 'crown' | 'shoulder' | null): OrderPen => {
    const pen = oneSensorJob('checked')
    const hole = { place, millimeters: 4, degrees: null, overlapsRepair: null }
    pen.write('tire.inspected', tireOf('LF', { tireDamage: ['puncture'], punctures: [hole] }), bay)
    judgeAgain(pen)
    return pen
  }
  const codes = (pen: OrderPen) =>
    pen
      .state()
      .diagnosis?.diagnosis.findings.filter(({ wheels }) => wheels.includes('LF'))
      .map(({ code }) => code)

  it.each(['crown', null] as const)(
    'in the %s may turn out to be repairable: a look inside is offered',
    (place) => {
      const pen = nail(place)
      expect(codes(pen)).toContain('puncture-found')
      expect(openTroubles(pen.state())).toEqual([])
      expect(pricedOf(pen).bundles.map(({ bundleKey }) => bundleKey)).toContain('leak.LF')
    },
  )

  it('in the shoulder is beyond repair, and the wheel waits for another tire', () => {
    const pen = nail('shoulder')
    expect(codes(pen)).toContain('puncture-not-repairable')
    expect(openTroubles(pen.state())).toMatchObject([{ what: 'hole-beyond-repair', wheel: 'LF' }])
    expect(pricedOf(pen).bundles.map(({ bundleKey }) => bundleKey)).toContain('tire.LF')
  })

  it('is taken back by a look that finds no puncture', () => {
    const pen = nail('shoulder')
    pen.write('tire.inspected', tireOf('LF', { tireDamage: [] }), bay)
    expect(openTroubles(pen.state())).toEqual([])
  })
})

describe('a search for a leak', () => {
  /** The left front loses air; the search was agreed on and its tire is about to be looked at inside. */
  const searched = (): OrderPen => {
    const pen = oneSensorJob('checked')
    pen.write('tire.inspected', tireOf('LF', { tireDamage: ['puncture'] }), bay)
    offerAndAgree(pen)
    workUntil(pen, (key) => key === 'LF.tire.inside')
    return pen
  }
  const answers = (pen: OrderPen) =>
    Object.fromEntries(
      newestBundles(pen.state()).map((bundle) => [bundle.bundleKey, answerTo(pen.state(), bundle)?.answer]),
    )

  it.each([
    ['a hole that may be repaired', 5, 'puncture.LF'],
    ['a hole beyond repair', 8, 'tire.LF'],
  ] as const)('keeps its answer when the look finds %s, and the rest is asked', (_, millimeters, asked) => {
    const pen = searched()
    const hole = { place: 'crown' as const, millimeters, degrees: 10, overlapsRepair: false }
    closeStep<'tire.inspected'>(pen, 'LF.tire.inside', { punctures: [hole] })
    offer(pen)
    expect(answers(pen)).toMatchObject({ 'leak.LF': 'authorized', 'sensor.RR': 'authorized' })
    expect(unansweredBundles(pen.state()).map(({ bundleKey }) => bundleKey)).toEqual([asked])
  })

  it.each([
    ['a price list that is dearer', { laborCentsPerHour: prices.laborCentsPerHour + 1_000 }, 'authorized'],
    // One version of an estimate has one rule of tax.
    ['another tax', { taxRatePercentThousandths: prices.taxRatePercentThousandths + 250 }, undefined],
  ] as const)('was agreed on at its price; with %s its answer is %s', (_, change, answer) => {
    const pen = searched()
    const hole = { place: 'crown' as const, millimeters: 5, degrees: 10, overlapsRepair: false }
    closeStep<'tire.inspected'>(pen, 'LF.tire.inside', { punctures: [hole] })
    judgeAgain(pen)
    const list = { ...prices, ...change, version: prices.version + 1 }
    const diagnosisId = pen.state().diagnosis?.written.entryId ?? ''
    pen.write('estimate.issued', estimatePayload(pricedOf(pen, list), diagnosisId, seal), desk)
    expect(answers(pen)['leak.LF']).toBe(answer)
    expect(answers(pen)['puncture.LF']).toBeUndefined()
  })

  it('ends with its tire closed where there is no hole', () => {
    const pen = searched()
    workUntil(pen, () => false)
    expect(openTroubles(pen.state())).toEqual([])
    expect(wheelStatus(pen.state(), 'LF')).toBe('secured')
  })

  it('is followed by the price of the repair though the findings are the same as before', () => {
    const pen = oneSensorJob('checked')
    const hole = { place: 'crown' as const, millimeters: 5, degrees: 10, overlapsRepair: false }
    pen.write('tire.inspected', tireOf('LF', { tireDamage: ['puncture'], punctures: [hole] }), bay)
    offerAndAgree(pen)
    workUntil(pen, (key) => key === 'LF.tire.inside')
    closeStep<'tire.inspected'>(pen, 'LF.tire.inside', { punctures: [hole] })
    expect(pen.state().diagnosis?.outdated).toBe(false)
    expect(estimateIsMissing(pen.state())).toBe(true)
  })
})
