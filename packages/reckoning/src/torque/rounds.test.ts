import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { TorqueUnit } from '../units/torque-units.ts'
import { roundTorque } from './rounds.ts'

const at = (value: number, unit: TorqueUnit = 'lbf·ft') => ({ value, unit })

describe('the figure of a round', () => {
  it.each(['full', 'again'] as const)('%s is the maker’s own', (round) => {
    expect(roundTorque(round, at(83))).toEqual(at(83))
  })

  it.each([
    [at(80), 40],
    [at(83), 45],
    [at(100), 50],
    [at(125), 65],
    [at(136), 70],
    [at(107, 'N·m'), 55],
    [at(160, 'N·m'), 80],
    [at(24), 12],
    [at(25), 15],
    [at(13), 7],
  ])('half of %o is about %i', (figure, value) => {
    expect(roundTorque('half', figure)).toEqual({ value, unit: figure.unit })
  })

  it('takes the share that the shop has set', () => {
    expect(roundTorque('half', at(100), 0.55)).toEqual(at(55))
    expect(roundTorque('half', at(90), 0.6)).toEqual(at(54))
  })

  it('is 50 to 60 % of any figure of ten or more', () => {
    fc.assert(
      fc.property(fc.double({ min: 10, max: 400, noNaN: true }), (value) => {
        const half = roundTorque('half', at(value)).value
        expect(half).toBeGreaterThanOrEqual(value * 0.5 - 1e-6)
        expect(half).toBeLessThanOrEqual(value * 0.6 + 1e-6)
      }),
      { seed: 20260112 },
    )
  })
})
