import { describe, expect, it } from 'vitest'
import { passwordFault, pinFault } from './proof-of-person.ts'

describe('a PIN', () => {
  it.each([
    ['12345', 'not-six-digits'],
    ['1234567', 'not-six-digits'],
    ['12345a', 'not-six-digits'],
    ['١٢٣٤٥٦', 'not-six-digits'],
    ['111111', 'one-digit'],
    ['000000', 'one-digit'],
    ['123456', 'run'],
    ['012345', 'run'],
    ['567890', 'run'],
    ['654321', 'run'],
    ['098765', 'run'],
    ['123123', 'repeats'],
    ['121212', 'repeats'],
    ['147258', 'often-used'],
  ] as const)('%s is refused: %s', (pin, why) => {
    expect(pinFault(pin)).toBe(why)
  })

  it.each(['402817', '123457', '112234', '100001', '135790'])('%s is taken', (pin) => {
    expect(pinFault(pin)).toBeNull()
  })
})

describe('a password', () => {
  it.each([
    ['brindle', 'short'],
    ['elevensigns', 'short'],
    ['aaaaaaaaaaaa', 'few-signs'],
    ['ABCDabcdABCD', 'few-signs'],
  ] as const)('%s is refused: %s', (password, why) => {
    expect(passwordFault(password)).toBe(why)
  })

  it.each(['brindle-falls', 'зима в мастерской', 'twelve signs'])('%s is taken', (password) => {
    expect(passwordFault(password)).toBeNull()
  })
})
