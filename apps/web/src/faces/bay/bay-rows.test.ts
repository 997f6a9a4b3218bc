import type { FloorRow } from '@bayledger/contract/orders'
import { describe, expect, it } from 'vitest'
import { bayMoves, inBayOrder, isForTheBay } from './bay-rows.ts'

type Mover = FloorRow['moves'][number]['mover']

const row = (number: string, movers: readonly Mover[], rest: Partial<FloorRow> = {}) =>
  ({
    number,
    isOpen: true,
    openedAt: '2026-01-12T13:00:00.000Z',
    promisedAt: null,
    ready: null,
    waitsHere: false,
    assignedTo: null,
    moves: movers.map((mover) => ({
      mover,
      code: mover,
      wheel: null,
      values: {},
      words: '',
      since: null,
      until: null,
    })),
    ...rest,
  }) as FloorRow

describe('the vehicles of the bay', () => {
  it('are those where anyone in the bay must act, though the desk must too', () => {
    expect(isForTheBay(row('1', ['desk', 'bay']))).toBe(true)
    expect(isForTheBay(row('2', ['torque-check']))).toBe(true)
    expect(isForTheBay(row('3', ['out-on-the-road']))).toBe(true)
    expect(isForTheBay(row('4', ['customer', 'desk', 'parts', 'waiting-until']))).toBe(false)
    expect(isForTheBay(row('5', ['bay'], { isOpen: false }))).toBe(false)
    expect(bayMoves(row('6', ['desk', 'bay'])).map(({ mover }) => mover)).toEqual(['bay'])
  })

  it('are listed with my own first, then nobody’s, then others’, and by who waits and what is promised', () => {
    const rows = [
      row('other', ['bay'], { assignedTo: 'bo', waitsHere: true }),
      row('later', ['bay'], { promisedAt: '2026-01-12T18:00:00.000Z' }),
      row('sooner', ['bay'], { promisedAt: '2026-01-12T16:00:00.000Z' }),
      row('waits', ['bay'], { waitsHere: true, promisedAt: '2026-01-12T20:00:00.000Z' }),
      row('mine', ['bay'], { assignedTo: 'ines' }),
    ]
    expect(inBayOrder(rows, 'ines').map(({ number }) => number)).toEqual([
      'mine',
      'waits',
      'sooner',
      'later',
      'other',
    ])
  })
})
