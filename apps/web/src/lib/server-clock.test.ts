import { expect, it } from 'vitest'
import { hearServerTime, serverAheadMs } from './server-clock.ts'

const now = '2026-01-12T17:00:30.000Z'
const noon = Date.parse('2026-01-12T17:00:00.000Z')

it('is ahead by what the server said at the middle of the time that its answer took', () => {
  expect(serverAheadMs()).toBeNull()
  hearServerTime(now, noon, noon + 4_000)
  expect(serverAheadMs()).toBe(28_000)
})

it.each([
  ['took too long', noon + 10_001],
  ['came before it was asked for, by a clock that was set meanwhile', noon - 1],
])('is not heard from an answer that %s', (_, answeredAt) => {
  hearServerTime(now, noon, noon)
  hearServerTime(now, noon, answeredAt)
  expect(serverAheadMs()).toBe(30_000)
})
