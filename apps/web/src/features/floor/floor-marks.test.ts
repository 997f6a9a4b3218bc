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

  it('says that the customer waits here while the order is open', () => {
    expect(floorMarks(row({ waitsHere: true }), asOf).waitsHere).toBe(true)
    expect(floorMarks(row({ waitsHere: true, isOpen: false }), asOf).waitsHere).toBe(false)
  })

  it.each(['wheel-off', 'wheel-untorqued', 'torque-check'])('marks a wheel by %s', (code) => {
    expect(floorMarks(row({ moves: [move('step-open'), move(code, {}, 'LF')] }), asOf).wheelOff).toBe(true)
    expect(floorMarks(row({ moves: [move(code)] }), asOf).wheelOff).toBe(false)
  })

  it('names each danger in a tire', () => {
    const moves = ['sealant', 'run-low'].map((danger) => move('handle-with-care', { danger }, 'LF'))
    expect(floorMarks(row({ moves }), asOf).care).toEqual(['sealant', 'driven low'])
    expect(floorMarks(row({ moves: [move('step-open')] }), asOf).care).toEqual([])
  })
})
