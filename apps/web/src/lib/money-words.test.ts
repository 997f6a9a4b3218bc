import { expect, it } from 'vitest'
import { moneyWords } from './money-words.ts'

it('says of a withheld sum that it is not shown, and of nothing that it is nothing', () => {
  expect(moneyWords(null)).toBe('not shown here')
  expect(moneyWords(undefined)).toBe('not shown here')
  expect(moneyWords(0)).toBe('$0.00')
  expect(moneyWords(20_340)).toBe('$203.40')
})
