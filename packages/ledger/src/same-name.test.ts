import { expect, it } from 'vitest'
import { isSameName } from './same-name.ts'

it.each([
  ['W. Dünmore-Gray', 'w dunmore gray', true],
  [' José  Núñez ', 'JOSE NUÑEZ', true],
  ['W. Dunmore-Gray', 'W. Dunmore', false],
  ['W. Dunmore-Gray', 'x', false],
  ['李 明', '李 明', true],
  ['李 明', '王 明', false],
])('%s and %s are one name: %s', (one, other, same) => {
  expect(isSameName(one, other)).toBe(same)
})
