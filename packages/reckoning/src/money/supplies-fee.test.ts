import { describe, expect, it } from 'vitest'
import type { EstimateLine } from '../estimate.ts'
import { suppliesFeeCents } from './supplies-fee.ts'

const line = (kind: EstimateLine['kind'], taxClass: EstimateLine['taxClass'], amountCents: number) =>
  ({ kind, taxClass, amountCents }) as EstimateLine
const rule = { percentThousandths: 5_000, capCents: 1_200 }
const labor = (cents: number) => line('labor', 'labor', cents)

describe('the supplies fee', () => {
  it('is a share of the labor and of nothing else, the look among it', () => {
    expect(suppliesFeeCents([line('look', 'labor', 5_200), labor(7_100)], rule, 0)).toBe(615)
    expect(suppliesFeeCents([labor(7_100), line('part', 'parts', 6_800)], rule, 0)).toBe(355)
  })

  it('is not taken for a look alone, nor where there is no labor', () => {
    expect(suppliesFeeCents([line('look', 'labor', 5_200)], rule, 0)).toBe(0)
    expect(suppliesFeeCents([line('part', 'parts', 6_800)], rule, 0)).toBe(0)
  })

  it.each([
    [23_980, 0, 1_199],
    [24_000, 0, 1_200],
    [24_020, 0, 1_200],
    [24_000, 700, 500],
    [24_000, 1_200, 0],
    [24_000, 1_500, 0],
  ])('of %i cents of labor with %i already charged is %i: never over its cap', (cents, charged, fee) => {
    expect(suppliesFeeCents([labor(cents)], rule, charged)).toBe(fee)
  })
})
