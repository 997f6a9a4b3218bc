import { expect, it } from 'vitest'
import { refused, taken } from './reading.ts'

it('a reading is the value that was taken', () => {
  expect(taken(35)).toEqual({ ok: true, value: 35 })
})

it('a refusal names what was found, what is allowed and what to do', () => {
  const words = { found: 'x'.repeat(60), allowed: 'a number', do: 'Type it again.' }
  expect(refused('shape', words)).toEqual({ ok: false, fault: 'shape', ...words })
})

it('a refusal of a long text names no more of it than fits on a line', () => {
  const { found } = refused('shape', { found: 'y'.repeat(61), allowed: '', do: '' })
  expect(found).toBe(`${'y'.repeat(59)}…`)
})
