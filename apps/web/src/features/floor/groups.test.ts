import type { FloorRow } from '@bayledger/contract/orders'
import { describe, expect, it } from 'vitest'
import { floorGroups, rowsOfGroup } from './groups.ts'

const row = (
  number: string,
  mover: FloorRow['moves'][number]['mover'],
  rest: Partial<FloorRow> = {},
  code = 'x',
) =>
  ({
    number,
    isOpen: true,
    openedAt: '2026-01-12T13:00:00.000Z',
    promisedAt: null,
    moves: [
      { mover, code, wheel: null, values: {}, words: '', since: '2026-01-12T14:00:00.000Z', until: null },
    ],
    ...rest,
  }) as FloorRow

describe('the floor list', () => {
  it('puts every mover but nobody into one group', () => {
    const movers = floorGroups.flatMap(({ movers }) => [...movers])
    expect(new Set(movers).size).toBe(movers.length)
    expect(movers).not.toContain('nobody')
  })

  it('shows stops first, then by promise, then by age', () => {
    const rows = [
      row('late', 'desk', { promisedAt: '2026-01-12T18:00:00.000Z' }),
      row('soon', 'desk', { promisedAt: '2026-01-12T16:00:00.000Z' }),
      row('stop', 'desk', {}, 'stop-untold'),
      row('elsewhere', 'bay'),
    ]
    expect(rowsOfGroup(rows, ['desk', 'manager']).map(({ number }) => number)).toEqual([
      'stop',
      'soon',
      'late',
    ])
  })
})
