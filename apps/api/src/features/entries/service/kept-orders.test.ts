import type { Entry } from '@bayledger/ledger/entry'
import { Pool } from 'pg'
import { describe, expect, it } from 'vitest'
import { oneSensorJob } from '../../../../../../packages/ledger/test-support/one-sensor-job.ts'
import { shopId } from '../../../../../../packages/ledger/test-support/shop.ts'
import { entriesOf, type KeptOrders, keepOrders, stateOfKept } from './kept-orders.ts'

const { orderId, entries } = oneSensorJob('checked')
const whole = entries()
const [first, ...later] = whole

/** A pool that never connects: nothing here reads the database. */
const orders = () => keepOrders(new Pool())

/** Other orders are looked at until the first ones are forgotten. */
const forgetBy = (kept: KeptOrders): void => {
  for (let other = 0; other < 300; other += 1)
    kept.absorb(shopId, `other-${other}`, 0, [{ ...first, orderId: `other-${other}` } as Entry])
}

describe('the orders in memory', () => {
  it('take over what follows directly, once', () => {
    const kept = orders()
    kept.absorb(shopId, orderId, 0, whole.slice(0, 1))
    kept.absorb(shopId, orderId, 1, later)
    kept.absorb(shopId, orderId, 1, later)
    const order = kept.peek(shopId, orderId)
    expect(order && entriesOf(order)).toEqual(whole)
    expect(order && stateOfKept(order).seq).toBe(whole.length)
  })

  it('do not begin an order that was forgotten while it was written at its later entries', () => {
    const kept = orders()
    kept.absorb(shopId, orderId, 0, whole.slice(0, 1))
    forgetBy(kept)
    expect(kept.peek(shopId, orderId)).toBeUndefined()
    expect(kept.absorb(shopId, orderId, 1, later)).toBeNull()
    expect(kept.absorb(shopId, orderId, 1, [])).toBeNull()
    expect(kept.peek(shopId, orderId)).toBeUndefined()
  })

  it('leave an order as it is where entries between are missing', () => {
    const kept = orders()
    kept.absorb(shopId, orderId, 0, whole.slice(0, 1))
    expect(kept.absorb(shopId, orderId, 2, whole.slice(2))).toBeNull()
    const order = kept.peek(shopId, orderId)
    expect(order && entriesOf(order)).toEqual(whole.slice(0, 1))
  })
})
