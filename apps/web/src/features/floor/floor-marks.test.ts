import type { FloorRow } from '@bayledger/contract/orders'
import { describe, expect, it } from 'vitest'
import { floorMarks } from './floor-marks.ts'

const asOf = '2026-01-12T17:00:00.000Z'
const move = (code: string, values: Record<string, unknown> = {}, wheel: 'LF' | null = null) =>
  ({ mover: 'bay', code, wheel, values, words: '', since: null, until: null }) as FloorRow['moves'][number]
const row = (changes: Partial<FloorRow>): FloorRow => ({
  orderId: 'a',
  locationId: 'b',
  number: 'T-1',
  seq: 3,
  openedAt: '2026-01-12T15:00:00.000Z',
  promisedAt: null,
  ready: null,
  waitsHere: false,
  assignedTo: null,
  isOpen: true,
  sealed: false,
  customerName: 'A. Person',
  vehicleDescription: 'A vehicle',
  color: null,
  plate: null,
  moves: [],
  ...changes,
})

describe('a row of the floor', () => {
  it('is late from its promise on, and no longer once it is finished', () => {
    const promisedAt = '2026-01-12T16:59:59.000Z'
    expect(floorMarks(row({ promisedAt }), asOf).isLate).toBe(true)
    expect(floorMarks(row({ promisedAt: asOf }), asOf).isLate).toBe(false)
    expect(floorMarks(row({ promisedAt, isOpen: false }), asOf).isLate).toBe(false)
    expect(floorMarks(row({}), asOf).isLate).toBe(false)
  })

  it('is not late while it waits until a time that was agreed with the customer', () => {
    const promisedAt = '2026-01-12T16:00:00.000Z'
    const wait = (reason: string) => ({
      ...move('wait', { reason }),
      mover: 'waiting-until' as const,
      until: '2026-01-19T14:00:00.000Z',
    })
    const isLate = (reason: string) => floorMarks(row({ promisedAt, moves: [wait(reason)] }), asOf).isLate
    expect(['trial-drive', 'customer-returns'].map(isLate)).toEqual([false, false])
    // The customer has not heard of these.
    expect(['cooling-down', 'weather', 'part'].map(isLate)).toEqual([true, true, true])
  })

  it('says that the customer waits here while the order is open', () => {
    expect(floorMarks(row({ waitsHere: true }), asOf).waitsHere).toBe(true)
    expect(floorMarks(row({ waitsHere: true, isOpen: false }), asOf).waitsHere).toBe(false)
  })

  it.each([
    ['wheel-off', 'wheel off'],
    ['wheel-untorqued', 'not torqued'],
    ['torque-check', 'not checked'],
  ])('marks a wheel by %s, wherever its sentence is', (code, words) => {
    const markOf = (...moves: FloorRow['moves']) => floorMarks(row({ moves }), asOf).wheel
    expect(markOf(move(code, {}, 'LF'), move('step-open'))).toEqual({ words, isFirst: true })
    expect(markOf(move('promise-slips'), move(code, {}, 'LF'))).toEqual({ words, isFirst: false })
    expect(markOf(move(code))).toBeNull()
  })

  it('names each danger in a tire', () => {
    const moves = ['sealant', 'run-low'].map((danger) => move('handle-with-care', { danger }, 'LF'))
    expect(floorMarks(row({ moves }), asOf).care).toEqual(['sealant', 'driven low'])
    expect(floorMarks(row({ moves: [move('step-open')] }), asOf).care).toEqual([])
  })
})
