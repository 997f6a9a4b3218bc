import { describe, expect, it } from 'vitest'
import type { SpecificationSheet } from '../sheet.ts'
import { type BalanceLeft, balanceDoubt, balancedFor, overLimit } from './balance-left.ts'

const left = (
  inner: number,
  outer: number,
  more: { unit?: 'oz' | 'g'; balancedAgain?: boolean } = {},
): BalanceLeft => ({ shows: 'figures', unit: 'g', inner, outer, balancedAgain: false, ...more })

describe('what balancing left', () => {
  it('is taken up to the limit of a side, which is 10 g on a car and 30 g on a light truck', () => {
    expect(balanceDoubt(left(10, 0), 'car')).toBeNull()
    expect(balanceDoubt(left(4, 11), 'car')).toEqual({
      why: 'over',
      side: 'outer',
      found: 11,
      unit: 'g',
      limitGrams: 10,
    })
    expect(balanceDoubt(left(4, 11), 'light-truck')).toBeNull()
    expect(balanceDoubt(left(30.5, 0), 'light-truck')).toMatchObject({ side: 'inner', limitGrams: 30 })
  })

  it('is judged in ounces too: 0.35 oz is 9.9 g, 0.36 oz is 10.2 g', () => {
    expect(balanceDoubt(left(0.35, 0.35, { unit: 'oz' }), 'car')).toBeNull()
    expect(balanceDoubt(left(0.36, 0, { unit: 'oz' }), 'car')).toMatchObject({ why: 'over', found: 0.36 })
  })

  it('is taken over the limit once the wheel was balanced again, and stays over it', () => {
    const again = left(14, 0, { balancedAgain: true })
    expect(balanceDoubt(again, 'car')).toBeNull()
    expect(overLimit(again, 'car')).toMatchObject({ found: 14, limitGrams: 10 })
  })

  it('is never more than a balancer shows, balanced again or not', () => {
    expect(balanceDoubt(left(0, 12.25, { unit: 'oz', balancedAgain: true }), 'light-truck')).toEqual({
      why: 'impossible',
      side: 'outer',
      found: 12.25,
      unit: 'oz',
      most: 12,
    })
    expect(balanceDoubt(left(351, 0), 'car')).toMatchObject({ why: 'impossible', most: 350 })
  })

  it('is not judged where the machine shows no figure', () => {
    expect(balanceDoubt({ shows: 'no-figure' }, 'car')).toBeNull()
    expect(overLimit({ shows: 'no-figure' }, 'car')).toBeNull()
  })
})

it.each([
  ['SL', 'car'],
  ['XL', 'car'],
  ['HL', 'car'],
  ['C', 'light-truck'],
  ['LT-E', 'light-truck'],
] as const)('a tire of class %s has the limit of a %s', (loadClass, kind) => {
  const axle = { loadClass }
  const sheet = { tire: { front: axle, rear: axle, spare: null } } as unknown as SpecificationSheet
  expect(balancedFor(sheet, 'LR')).toBe(kind)
})

it('a wheel of which the sheet has no tire has the wider limit', () => {
  expect(balancedFor(undefined, 'LF')).toBe('light-truck')
})
