import { coverBundle, isFree } from '@bayledger/reckoning/money/cover-bundles'
import { offeredAgain, priceEstimate } from '@bayledger/reckoning/money/price-estimate'
import { usualWarranty } from '@bayledger/reckoning/money/warranty'
import { describe, expect, it } from 'vitest'
import { asLead, comebackUntil, earlierOrder, judgedComeback, ownWork } from '../../test-support/comeback.ts'
import { keptMoney, seal } from '../../test-support/money.ts'
import { decide, oneSensorJob, pricedOf } from '../../test-support/one-sensor-job.ts'
import { wordsOf } from '../../test-support/seeded-ids.ts'
import { advisor, manager } from '../../test-support/shop.ts'
import { prices } from '../../test-support/tarn.ts'
import { estimatePayload } from '../subjects/consent/estimate-payload.ts'
import { comebackFacts, coversOfScope, earlierWork } from './comeback.ts'
import { bundleMoney, dueCents } from './money.ts'
import { nextMoves } from './moves.ts'

const day = (instant: string) => instant.slice(0, 10)

describe('what an earlier order did', () => {
  it('is its wheels, its sensors and its relearn, from the day when the keys went back', () => {
    expect(earlierWork(earlierOrder(), day)).toEqual({
      orderNumber: 'T-2602',
      done: { day: '2026-01-12', miles: 88_141 },
      wheels: ['LF', 'RF', 'RR', 'LR'],
      sensors: ['RR'],
      relearned: true,
    })
  })

  it('is nothing before the keys are back', () => {
    expect(earlierWork(oneSensorJob('sealed').state(), day)).toBeNull()
  })

  it('counts kilometers in miles', () => {
    const state = earlierOrder()
    if (!state.opened) throw new RangeError('never opened')
    const opened = { ...state.opened, odometer: { value: 100, unit: 'km' as const } }
    expect(comebackFacts({ ...state, opened }, [], usualWarranty, day).came.miles).toBe(62)
  })
})

describe('the cause of a comeback', () => {
  it('is what the order waits for once the findings are confirmed, before the estimate', () => {
    const pen = comebackUntil('confirmed')
    const codes = () => nextMoves(pen.state(), pen.now()).map(({ code }) => code)
    expect(codes()).toEqual(['comeback-cause-missing'])
    pen.write('comeback.judged', ownWork, asLead)
    expect(codes()).toEqual(['estimate-missing'])
  })

  it('is said again by a later entry, and both stay on record', () => {
    const pen = comebackUntil('confirmed')
    pen.write('comeback.judged', ownWork, asLead)
    const words = wordsOf('why')
    const last = pen.write('comeback.judged', { cause: 'something-else', words }, asLead)
    expect(pen.state().comeback).toMatchObject({ cause: 'something-else', words })
    expect(pen.entries().filter(({ kind }) => kind === 'comeback.judged')).toHaveLength(2)
    expect(pen.strike(last.id, manager)).toMatchObject({ code: 'STRIKE_NOT_ALLOWED' })
  })

  it('is for whoever may decide of a warranty', () => {
    expect(
      comebackUntil('confirmed').attempt('comeback.judged', ownWork, { by: advisor, deviceId: null }),
    ).toMatchObject({ code: 'ROLE_NOT_ALLOWED' })
  })
})

describe('an estimate on a comeback', () => {
  it('costs nothing where the sensor and the work are covered, and says so of each line', () => {
    const pen = comebackUntil('confirmed')
    pen.write('comeback.judged', { cause: 'part-failed', words: null }, asLead)
    const facts = judgedComeback(pen.state(), 'part-failed')
    const offered = pricedOf(pen)
    const estimate = priceEstimate({
      ...offered,
      prices,
      bundles: offered.bundles.map((bundle) => coverBundle(offeredAgain(bundle), facts)),
    })
    expect(estimate.money.totals.totalCents).toBe(0)
    const payload = estimatePayload(estimate, pen.state().diagnosis?.written.entryId ?? '', seal)
    const covers = coversOfScope(payload.scope, keptMoney, facts)
    pen.write('estimate.issued', payload, { by: advisor, deviceId: null, facts: { covers } })
    decide(pen, 'authorized')
    expect(dueCents(pen.state(), keptMoney)).toBe(0)
    for (const bundle of pen.state().estimates.at(-1)?.scope.bundles ?? []) {
      expect(bundle.covers?.every(isFree)).toBe(true)
      for (const line of bundleMoney(keptMoney, bundle.money)?.lines ?? [])
        if (line.cover) expect(line.cover.listCents).toBeGreaterThan(0)
    }
  })

  it('says of nothing that it is covered where there is no comeback', () => {
    const pen = oneSensorJob('estimated')
    expect(pen.state().estimates[0]?.scope.bundles.every(({ covers }) => covers === undefined)).toBe(true)
  })
})
