import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { oneSensorJob, workUntil } from '../test-support/one-sensor-job.ts'
import { type OrderPen, orderPen } from '../test-support/order-pen.ts'
import { answerRest, judgeAgain, offer } from '../test-support/parked.ts'
import { bay, before, changedEstimate, closeStep, desk } from '../test-support/refusals/setting.ts'
import { authorizedBundles, newestBundles, unansweredBundles } from './questions/answers.ts'
import { punctureVerdictAt } from './questions/puncture.ts'
import type { PunctureRecord } from './subjects/arrival/kinds.ts'

const hole: fc.Arbitrary<PunctureRecord> = fc.record({
  place: fc.constantFrom('crown', 'crown', 'crown', 'shoulder', 'sidewall', null),
  millimeters: fc.option(fc.integer({ min: 1, max: 8 }), { freq: 8 }),
  degrees: fc.constant(10),
  overlapsRepair: fc.constantFrom(false, false, false, false, true, null),
})

/** One hole, or two with what was seen between them; the inside as somebody may find it. */
const look = fc.record({
  punctures: fc.oneof(
    fc.tuple(hole),
    fc
      .tuple(hole, hole, fc.constantFrom(false, false, true, null))
      .map(([one, two, unitsOverlap]) => [one, { ...two, fromOthers: { millimeters: 80, unitsOverlap } }]),
  ),
  inside: fc.constantFrom(
    'sound' as const,
    'sound' as const,
    'foreign-body' as const,
    'run-low-damage' as const,
  ),
})

const job = before('RR.tire.inside').entries()

/** Puts the repair on the estimate whatever the findings offer, and says whether that is admitted. */
const pricesRepair = (pen: OrderPen): boolean =>
  pen.attempt(
    'estimate.issued',
    changedEstimate(pen, (estimate) => ({
      ...estimate,
      bundles: estimate.bundles.map((bundle, index) =>
        index === 0
          ? { ...bundle, works: [...bundle.works, { kind: 'repair-puncture', wheel: 'RR' } as const] }
          : bundle,
      ),
    })),
    desk,
  ).admitted

describe('a hole, whatever it is and whatever the customer answers', () => {
  it('has a price only after a verdict that it may be repaired, and is never plugged otherwise', () => {
    let repaired = 0
    fc.assert(
      fc.property(look, fc.constantFrom('authorized' as const, 'declined' as const), (seen, answer) => {
        const pen = orderPen('one-sensor', job)
        closeStep<'tire.inspected'>(pen, 'RR.tire.inside', seen)
        judgeAgain(pen)
        const isRepairable = punctureVerdictAt(pen.state(), 'RR')?.verdict === 'repairable'
        expect(pricesRepair(orderPen('one-sensor', [...pen.entries()]))).toBe(isRepairable)
        offer(pen)
        expect(newestBundles(pen.state()).some(({ title }) => title === 'puncture')).toBe(isRepairable)
        if (unansweredBundles(pen.state()).length > 0) answerRest(pen, answer)
        const planned = (pen.state().plan?.plan.steps ?? []).some(({ code }) => code === 'repair-leak')
        expect(planned).toBe(
          isRepairable && authorizedBundles(pen.state()).some(({ title }) => title === 'puncture'),
        )
        if (planned) {
          workUntil(pen, (key) => key === 'RR.leak.repair')
          expect(closeStep(pen, 'RR.leak.repair').admitted).toBe(true)
          repaired += 1
        }
      }),
      { seed: 20_260_112, numRuns: 100 },
    )
    expect(repaired).toBeGreaterThan(3)
  }, 120_000)

  it('is not priced by a look from outside, however harmless it seems', () => {
    const pen = oneSensorJob('checked')
    pen.write(
      'tire.inspected',
      {
        when: 'arrival',
        stepKey: null,
        wheel: 'RR',
        valve: null,
        stem: null,
        treadDepth32nds: 9,
        tireAgeYears: null,
        sensorAgeMonths: null,
        sealantSeen: null,
        tireDamage: ['puncture'],
        fastenerDamage: null,
        inside: null,
        punctures: [{ place: 'crown', millimeters: 2, degrees: 0, overlapsRepair: false }],
      },
      bay,
    )
    judgeAgain(pen)
    expect(pricesRepair(pen)).toBe(false)
  })
})
