import { expect, it } from 'vitest'
import { refused, taken } from './reading.ts'

it('a reading is the value that was taken', () => {
  expect(taken(35)).toEqual({ ok: true, value: 35 })
})

it('a refusal names what was found, what is allowed and what to do', () => {
  const found = 'x'.repeat(60)
  const words = { allowed: 'a number', do: 'Type it again.' }
  expect(refused('shape', found, words)).toEqual({ ok: false, fault: 'shape', found, ...words })
})

it('a refusal of a long text names no more of it than fits on a line', () => {
  const { found } = refused('shape', 'y'.repeat(61), { allowed: '', do: '' })
  expect(found).toBe(`${'y'.repeat(59)}…`)
})
