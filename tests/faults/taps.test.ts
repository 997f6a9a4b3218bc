import { expect, it } from 'vitest'
import { type Found, judgeTaps, type Tap } from './support/taps.ts'

const ines = 'staff-ines'
const entry = (id: string, psi: number, more: Partial<Found> = {}): Found => ({
  id,
  orderId: 'order',
  kind: 'wheel.checked',
  writtenBy: { kind: 'staff', staffId: ines },
  payload: { gauge: { pressure: { value: psi } } },
  ...more,
})
const struck = (id: string, entryId: string): Found =>
  entry(id, 0, { kind: 'entry.struck', payload: { entryId, reason: 'undone' } })
const gauged = (psi: number, isDone = true): Tap => ({
  staffId: ines,
  orderId: 'order',
  kind: 'wheel.checked',
  says: { 'payload.gauge.pressure.value': psi },
  isDone,
})
const undone = (psi: number, isDone = true): Tap => ({
  ...gauged(psi, isDone),
  kind: 'entry.struck',
  says: { 'payload.reason': 'undone' },
  withdraws: { 'payload.gauge.pressure.value': psi },
})
const judge = (taps: readonly Tap[], ledger: readonly Found[], told: readonly Found[] = []) => {
  const { faults: _, ...counts } = judgeTaps(taps, ledger as never, [], told)
  return counts
}

it('finds each tapped entry once, in the ledger or where its refusal is told', () => {
  expect(judge([gauged(31), gauged(32)], [entry('a', 31)], [entry('b', 32)])).toEqual({
    entries: 2,
    lost: 0,
    twice: 0,
  })
})

it('sees what is lost, and what another person or another order has instead', () => {
  const elsewhere = entry('a', 31, { orderId: 'other' })
  const another = entry('b', 31, { writtenBy: { kind: 'staff', staffId: 'staff-bo' } })
  expect(judge([gauged(31)], [])).toEqual({ entries: 1, lost: 1, twice: 0 })
  expect(judge([gauged(31)], [elsewhere, another])).toEqual({ entries: 1, lost: 1, twice: 0 })
})

it('sees what was written twice under two ids, and counts one id in two places once', () => {
  expect(judge([gauged(31)], [entry('a', 31), entry('b', 31)])).toEqual({ entries: 1, lost: 0, twice: 1 })
  expect(judge([gauged(31)], [entry('a', 31)], [entry('a', 31)])).toEqual({ entries: 1, lost: 0, twice: 0 })
})

it('lets what no screen called done be there or not, and never twice', () => {
  expect(judge([gauged(31, false)], [])).toEqual({ entries: 0, lost: 0, twice: 0 })
  expect(judge([gauged(31, false)], [entry('a', 31)])).toEqual({ entries: 0, lost: 0, twice: 0 })
  expect(judge([gauged(31, false)], [entry('a', 31), entry('b', 31)])).toEqual({
    entries: 0,
    lost: 0,
    twice: 1,
  })
})

it('follows a withdrawal to the very entry that was withdrawn', () => {
  const ledger = [entry('a', 31), entry('b', 32), struck('c', 'b')]
  expect(judge([undone(32)], ledger)).toEqual({ entries: 1, lost: 0, twice: 0 })
  expect(judge([undone(31)], ledger)).toEqual({ entries: 1, lost: 1, twice: 0 })
})
