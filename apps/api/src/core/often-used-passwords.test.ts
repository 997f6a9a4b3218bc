import { describe, expect, it } from 'vitest'
import { isOftenUsed } from './often-used-passwords.ts'

describe('a password that many people take', () => {
  it.each([
    '1q2w3e4r5t6y',
    'QWERTY123456',
    'Password2026!',
    '123baseball123',
    'sunshine 2026',
    'dragondragon',
    'Bayledger-2026',
    'tire.pressure.32',
    'Tire-Shop Tire-Shop',
  ])('%s is known', async (password) => {
    expect(await isOftenUsed(password)).toBe(true)
  })

  it.each(['a quiet corner', 'brindle-falls-marguerite', 'four tires and a spare', '48-mulberry-tarpaulin'])(
    '%s is not',
    async (password) => {
      expect(await isOftenUsed(password)).toBe(false)
    },
  )
})
