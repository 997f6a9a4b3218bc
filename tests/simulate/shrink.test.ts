import { expect, it } from 'vitest'
import { shrink } from './shrink.ts'

it('leaves the few things that are needed, wherever they stand', async () => {
  const list = Array.from({ length: 1_000 }, (_, index) => index)
  const needs = [3, 500, 998]
  const tried: number[] = []
  const shortest = await shrink(list, async (shorter) => {
    tried.push(shorter.length)
    return needs.every((one) => shorter.includes(one))
  })
  expect(shortest).toEqual(needs)
  expect(tried.length).toBeLessThan(400)
})

it('leaves a list as it is of which everything is needed', async () => {
  expect(await shrink([1, 2, 3], async (shorter) => shorter.length === 3)).toEqual([1, 2, 3])
})
