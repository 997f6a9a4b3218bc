import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { keptMoney, seal } from '../../test-support/money.ts'
import { oneSensorJob } from '../../test-support/one-sensor-job.ts'
import { advisor, manager } from '../../test-support/shop.ts'
import type { Entry } from '../entry.ts'
import { fold } from '../fold.ts'
import {
  authorizedCents,
  estimateMoney,
  lookFee,
  moneySidesOf,
  neverPaidCents,
  owedCents,
  paidBySides,
  paidCents,
  payment,
  pricedEstimate,
} from './money.ts'

const nothing = new Map<string, string>()

describe('the money of an order', () => {
  it('is what was authorized, what was paid, and the rest', () => {
    const pen = oneSensorJob('worked')
    const authorized = authorizedCents(pen.state(), keptMoney)
    expect(authorized).toBeGreaterThan(0)
    expect(paidCents(pen.state(), keptMoney)).toBe(0)
    pen.write(
      'payment.noted',
      { money: seal({ amountCents: 5_000 }), method: 'cash', back: null },
      { by: advisor, deviceId: null },
    )
    expect(paidCents(pen.state(), keptMoney)).toBe(5_000)
    expect(owedCents(pen.state(), keptMoney)).toBe((authorized ?? 0) + 5_200 - 5_000)
  })

  it('given back is owed again, and still was paid once: what was never paid is less', () => {
    const pen = oneSensorJob('worked')
    const due = owedCents(pen.state(), keptMoney) ?? 0
    const by = { by: manager, deviceId: null }
    const note = (amountCents: number, isBack: boolean) => {
      const back = isBack
        ? { why: seal({ why: 'Charged twice.' }), of: paidBySides(pen.state(), 'cash') }
        : null
      pen.write('payment.noted', { money: seal({ amountCents }), method: 'cash', back }, by)
    }
    note(due - 500, false)
    expect(neverPaidCents(pen.state(), keptMoney)).toBe(500)
    note(-1_200, true)
    expect(owedCents(pen.state(), keptMoney)).toBe(1_700)
    expect(neverPaidCents(pen.state(), keptMoney)).toBe(500)
    expect(neverPaidCents(pen.state(), nothing)).toBeNull()
    note(2_000, false)
    expect(neverPaidCents(pen.state(), keptMoney)).toBe(-300)
  })

  it('that was withheld reads as withheld, never as nothing', () => {
    const pen = oneSensorJob('worked')
    const issued = pen.state().estimates[0]
    if (!issued) throw new RangeError('the job has an estimate')
    expect(authorizedCents(pen.state(), nothing)).toBeNull()
    expect(owedCents(pen.state(), nothing)).toBeNull()
    expect(estimateMoney(nothing, issued.scope.money)).toBeNull()
    expect(pricedEstimate(nothing, issued.scope)).toBeNull()
    expect(lookFee(nothing, pen.state().authority.look?.money)).toBeNull()
    pen.write(
      'payment.noted',
      { money: seal({ amountCents: 7_000 }), method: 'cash', back: null },
      { by: advisor, deviceId: null },
    )
    expect(paidCents(pen.state(), nothing)).toBeNull()
  })

  it('that a side holds in another form than money reads as withheld too', () => {
    const digest = 'd'.repeat(64)
    for (const text of ['no money', '{"amountCents":"12"}', '{"amountCents":12,"more":1}'])
      expect(payment(new Map([[digest, text]]), digest)).toBeNull()
  })

  it('of a first version is read from the entries that hold it inline', () => {
    const entries = JSON.parse(
      readFileSync(`${import.meta.dirname}/../frozen/version-1-whole-job.json`, 'utf8'),
    ) as Entry[]
    const state = fold(entries)
    const sides = moneySidesOf(entries, [])
    expect(lookFee(sides, state.authority.look?.money)).toEqual({ lookFeeCents: 5_200 })
    expect(authorizedCents(state, sides)).toBe(20_340)
    expect(paidCents(state, sides)).toBe(20_340)
    expect(owedCents(state, sides)).toBe(0)
    const bundle = state.estimates[0]?.scope.bundles[0]
    expect(bundle?.asWritten?.title).toBe('New sensor, right rear')
    expect(bundle?.cautions).toEqual([{ number: 'CT-01', version: 1 }])
  })
})
