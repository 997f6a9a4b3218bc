import { describe, expect, it } from 'vitest'
import { centsOf, missingInPayment, missingInRefund } from './payment-form.ts'

describe('a payment as it is typed', () => {
  it.each([
    [203.4, 20_340],
    [0.29, 29],
    [1_234_567.89, 123_456_789],
    [-52, -5_200],
    [1.005, null],
    [null, null],
    ['unreadable', null],
  ] as const)('of %s is %s cents', (typed, cents) => {
    expect(centsOf(typed)).toBe(cents)
  })

  it('needs an amount and how it was paid', () => {
    expect(missingInPayment(null, 'cash')).toMatch(/amount in dollars/)
    expect(missingInPayment(0, 'cash')).toMatch(/amount that was received/)
    expect(missingInPayment(52, null)).toBe('How was it paid?')
    expect(missingInPayment(52, 'cash')).toBeUndefined()
  })

  it('given back needs a method, an amount of at most what is left, and a reason', () => {
    const given = { typed: 40, method: 'card', leftCents: 4_000, why: 'Charged twice.' } as const
    expect(missingInRefund(given)).toBeUndefined()
    expect(missingInRefund({ ...given, method: null })).toBe('How was it paid?')
    expect(missingInRefund({ ...given, typed: 1.005 })).toMatch(/amount in dollars/)
    expect(missingInRefund({ ...given, typed: -40 })).toMatch(/given back/)
    expect(missingInRefund({ ...given, typed: 40.01 })).toMatch(/at most/)
    expect(missingInRefund({ ...given, why: ' ' })).toMatch(/why/)
  })
})
