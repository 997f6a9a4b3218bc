import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { keptMoney, seal } from '../test-support/money.ts'
import { decisionOf, issuePlan, oneSensorJob, stageWriters } from '../test-support/one-sensor-job.ts'
import type { OrderPen } from '../test-support/order-pen.ts'
import { changedEstimate, dearer, desk } from '../test-support/refusals/setting.ts'
import { wordsOf } from '../test-support/seeded-ids.ts'
import { lead, technician } from '../test-support/shop.ts'
import { closingOf } from '../test-support/step-payload.ts'
import { answerTo, authorizedBundles, isLook, newestBundles } from './questions/answers.ts'
import { readySteps, sealGate } from './questions/gates.ts'
import { bundleTotals, dueCents, owedCents, paidCents } from './questions/money.ts'
import { whyNot } from './questions/why-not.ts'
import { workBegan } from './questions/work-began.ts'

const seed = 20_260_112

const action = fc.oneof(
  fc.record({
    does: fc.constant('answer' as const),
    answer: fc.constantFrom('authorized' as const, 'declined' as const, 'deferred' as const),
    at: fc.nat(3),
  }),
  fc.record({ does: fc.constant('work' as const), steps: fc.integer({ min: 1, max: 8 }) }),
  fc.record({ does: fc.constant('revise' as const), dearer: fc.boolean() }),
  fc.record({ does: fc.constant('pay' as const), cents: fc.integer({ min: 1, max: 9_000 }) }),
  fc.record({ does: fc.constant('correct' as const), at: fc.nat(5), more: fc.integer({ min: 1, max: 500 }) }),
)
type Action = typeof action extends fc.Arbitrary<infer One> ? One : never

/** Tries one action; says what it would have to change if it is admitted. */
const tryAction = (pen: OrderPen, one: Action): boolean => {
  switch (one.does) {
    case 'answer': {
      const bundles = newestBundles(pen.state()).filter((bundle) => !isLook(bundle))
      const bundle = bundles[one.at % bundles.length]
      if (!bundle) return false
      const before = answerTo(pen.state(), bundle)?.answer ?? null
      const begun = workBegan(pen.state(), bundle)
      const decided = pen.attempt(
        'estimate.decided',
        decisionOf(pen, [
          {
            bundleKey: bundle.bundleKey,
            answer: one.answer,
            deferredUntil: null,
            cautionsShown: one.answer === 'authorized' ? [] : bundle.cautions,
          },
        ]),
        desk,
      )
      const reverses = before === 'declined' && one.answer === 'authorized'
      const takesBack = before === 'authorized' && one.answer === 'declined' && begun === null
      expect(decided.admitted).toBe(before === null || before === 'deferred' || reverses || takesBack)
      if (decided.admitted) issuePlan(pen, decided.entry.id)
      if (takesBack) expectTakenBack(pen, bundle.bundleKey)
      return decided.admitted
    }
    case 'work': {
      for (let left = one.steps; left > 0; left -= 1) {
        const step = readySteps(pen.state()).find((ready) => whyNot(pen.state(), ready) === null)
        if (!step) return false
        const { kind, payload } = closingOf(pen.state(), step)
        pen.write(kind, payload, { by: step.closedBy === 'torque.checked' ? lead : technician })
      }
      return true
    }
    case 'revise':
      pen.write('estimate.issued', changedEstimate(pen, one.dearer ? dearer : (same) => same), desk)
      return true
    case 'pay':
      pen.write(
        'payment.noted',
        { money: seal({ amountCents: one.cents }), method: 'cash', back: null },
        desk,
      )
      return true
    case 'correct': {
      const { payments } = pen.state()
      const noted = payments[one.at % Math.max(1, payments.length)]
      if (!noted) return false
      const before = JSON.parse(keptMoney.get(noted.money) ?? '{}').amountCents
      pen.write(
        'payment.corrected',
        {
          paymentId: noted.written.entryId,
          replaces: noted.money,
          money: seal({ amountCents: before + one.more }),
          method: 'card',
          why: wordsOf('why'),
        },
        desk,
      )
      return true
    }
  }
}

/** No step of a bundle whose Yes was taken back stays, and its entry says that it was a Yes. */
const expectTakenBack = (pen: OrderPen, bundleKey: string): void => {
  const { answers, plan } = pen.state()
  expect(answers[bundleKey]).toMatchObject({ answer: 'declined', takesBack: { seq: expect.any(Number) } })
  expect((plan?.plan.steps ?? []).filter((step) => step.bundleKey === bundleKey)).toEqual([])
}

describe('an estimate that changes after its answers', () => {
  it('adds up in any order of versions, answers, payments and corrections, and decides nothing twice', () => {
    fc.assert(
      fc.property(fc.array(action, { minLength: 3, maxLength: 14 }), (actions) => {
        const pen = oneSensorJob('shown', 'after-answers')
        let paid = 0
        const last: { given: { readonly money: string; readonly answer: string } | null } = { given: null }
        for (const one of actions) {
          const admitted = tryAction(pen, one)
          const state = pen.state()
          const [sensor] = newestBundles(state)
          if (admitted && one.does === 'answer' && sensor)
            last.given = { money: sensor.money, answer: one.answer }
          if (admitted && one.does === 'pay') paid += one.cents
          if (admitted && one.does === 'correct') paid += one.more
          // The last answer holds as long as the bundle costs what it cost then; at another price it has none.
          if (sensor)
            expect(answerTo(state, sensor)?.answer).toBe(
              last.given?.money === sensor.money ? last.given.answer : undefined,
            )
          const yes = newestBundles(state).filter(
            (bundle) => isLook(bundle) || answerTo(state, bundle)?.answer === 'authorized',
          )
          const due = yes.reduce(
            (sum, bundle) => sum + (bundleTotals(keptMoney, bundle)?.totalCents ?? Number.NaN),
            0,
          )
          expect(dueCents(state, keptMoney)).toBe(due)
          expect(paidCents(state, keptMoney)).toBe(paid)
          expect(owedCents(state, keptMoney)).toBe(due - paid)
          // The bay works only on what is authorized in the newest version.
          const authorized = new Set(authorizedBundles(state).map(({ bundleKey }) => bundleKey))
          if (one.does === 'answer' && admitted)
            for (const { bundleKey } of readySteps(state))
              expect(bundleKey === null || authorized.has(bundleKey)).toBe(true)
        }
      }),
      { seed, numRuns: 60 },
    )
  }, 120_000)
})

describe('the seal', () => {
  it('waits for an estimate where the findings offer work, and for no estimate where they were refused', () => {
    const pen = oneSensorJob('confirmed', 'seal-waits')
    expect(sealGate(pen.state()).map(({ code }) => code)).toEqual(['estimate-missing'])
    const codes = (pen.state().diagnosis?.diagnosis.findings ?? [])
      .filter(({ offers }) => offers.length > 0)
      .map(({ code }) => code)
    const refused = oneSensorJob('confirmed', 'seal-waits')
    refused.write(
      'refusal.recorded',
      {
        codes,
        cautionShown: { number: 'CT-01', version: 1 },
        proof: { kind: 'signed', digest: wordsOf('signature') },
        leaves: null,
      },
      desk,
    )
    expect(sealGate(refused.state())).toEqual([])
    stageWriters.estimated(pen)
    expect(sealGate(pen.state()).map(({ code }) => code)).toEqual(['estimate-unanswered'])
  })
})

describe('what the look costs', () => {
  const withTerms = (lookFee: 'charged' | 'waived-with-work' | 'waived'): OrderPen => {
    const pen = oneSensorJob('written-up', `look-${lookFee}`)
    pen.write(
      'authority.given',
      {
        to: ['look', 'drive'],
        by: { relation: 'owner', name: wordsOf('owner') },
        channel: 'in-person',
        money: seal({ lookFeeCents: lookFee === 'waived' ? 0 : 5_200 }),
        lookFee,
      },
      desk,
    )
    stageWriters.checked(pen)
    stageWriters.confirmed(pen)
    return pen
  }

  it.each([
    ['charged', 5_200],
    ['waived-with-work', 5_200],
    ['waived', 0],
  ] as const)('is owed before any estimate where it is %s: %i', (terms, cents) => {
    expect(dueCents(withTerms(terms).state(), keptMoney)).toBe(cents)
  })
})
