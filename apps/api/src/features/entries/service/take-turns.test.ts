import { expect, it } from 'vitest'
import { takeOpeningsInTurn } from './take-turns.ts'

it('opens one after the other in a shop, whatever becomes of each, and shops do not wait for each other', async () => {
  const { inTurn } = takeOpeningsInTurn()
  const told: string[] = []
  const open = (name: string, shopId: string, fails = false) =>
    inTurn(shopId, async () => {
      told.push(`${name} begins`)
      await Promise.resolve()
      told.push(`${name} ends`)
      if (fails) throw new Error(name)
      return name
    })
  const results = await Promise.allSettled([
    open('a', 'one'),
    open('b', 'one', true),
    open('c', 'one'),
    open('d', 'two'),
  ])
  expect(results.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled', 'fulfilled'])
  expect(told.filter((line) => !line.startsWith('d'))).toEqual([
    'a begins',
    'a ends',
    'b begins',
    'b ends',
    'c begins',
    'c ends',
  ])
  expect(told.indexOf('d begins')).toBeLessThan(told.indexOf('b begins'))
})
