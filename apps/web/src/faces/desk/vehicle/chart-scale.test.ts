import type { TimedReading } from '@bayledger/contract/vehicle-page'
import { describe, expect, it } from 'vitest'
import { chartScale, chartSize, compared } from './chart-scale.ts'

const reading = (at: string, comparedPsi: number | null): TimedReading => ({
  number: 'T-1',
  wheel: 'LF',
  when: 'received',
  at,
  psi: 30,
  comparedPsi,
})
const readings = [reading('2026-01-01T12:00:00Z', 35), reading('2026-01-11T12:00:00Z', 31.2)]

describe('the chart of pressures over time', () => {
  it('puts the first reading left, the last right and a higher pressure higher', () => {
    const scale = chartScale(compared(readings), null)
    expect(scale?.x('2026-01-01T12:00:00Z')).toBe(chartSize.left)
    expect(scale?.x('2026-01-11T12:00:00Z')).toBe(chartSize.width - chartSize.right)
    expect(scale?.y(35) ?? 0).toBeLessThan(scale?.y(31.2) ?? 0)
    expect(scale?.rules).toEqual([31, 32, 33, 34, 35])
  })

  it('always holds the warning points, and a single reading too', () => {
    expect(chartScale(compared(readings), { front: 26.25, rear: 24 })?.rules).toEqual([
      24, 26, 28, 30, 32, 34, 36,
    ])
    const one = chartScale(compared(readings.slice(0, 1)), null)
    expect(one?.x('2026-01-01T12:00:00Z')).toBe(chartSize.left)
    expect(one?.rules).toEqual([35, 36])
  })

  it('leaves out what cannot be compared, and is no chart without a reading', () => {
    expect(compared([reading('2026-01-01T12:00:00Z', null)])).toEqual([])
    expect(compared([{ ...reading('2026-01-01T12:00:00Z', 60), wheel: 'SP' }])).toEqual([])
    expect(chartScale([], { front: 26, rear: 26 })).toBeNull()
  })
})
