import { describe, expect, it } from 'vitest'
import type { Evidence } from '../../evidence/evidence-schema.ts'
import { wheelShortfalls } from './wheel-shortfall.ts'

const units = { pressure: 'psi', temperature: 'F', altitude: 'ft' } as const
const cold = { outdoor: 32, tires: 'cold', altitude: 0 } as const

const evidence = (
  gauges: Partial<Record<'LF' | 'RF' | 'RR' | 'LR' | 'SP', number>>,
  surroundings: Evidence['surroundings'] = { ...cold, lastSet: { temperature: 68, altitude: 0 } },
): Evidence => ({
  units,
  vehicle: { system: 'direct', placard: { front: 33, rear: 33, spare: 60, verified: true } },
  wheels: Object.fromEntries(Object.entries(gauges).map(([wheel, gauge]) => [wheel, { gauge }])),
  surroundings,
})

describe('what each wheel lacks', () => {
  it('is cold alone at one wheel and lost air as well at another', () => {
    expect(wheelShortfalls(evidence({ LF: 29.7, RR: 24 }))).toEqual([
      {
        wheel: 'LF',
        lacks: 3.3,
        why: {
          byTemperature: 3.3,
          byAltitude: 0,
          byLostAir: 0,
          isBeyondError: false,
          most: 1.6,
        },
      },
      {
        wheel: 'RR',
        lacks: 9,
        why: {
          byTemperature: 3.3,
          byAltitude: 0,
          byLostAir: 5.7,
          isBeyondError: true,
          most: 1.5,
        },
      },
    ])
  })

  it('adds to the whole in tenths, altitude included', () => {
    const from = { ...cold, lastSet: { temperature: 61, altitude: 5_280 } }
    for (const { lacks, why } of wheelShortfalls(evidence({ LF: 24.3, RF: 26.6, LR: 22.2 }, from))) {
      if (typeof why === 'string') throw new Error('a temperature is missing')
      expect(why.byAltitude).toBe(2.6)
      expect(why.byTemperature + why.byAltitude + why.byLostAir).toBeCloseTo(lacks, 9)
    }
  })

  it('is more lost air where it has become warmer', () => {
    const since = { ...cold, outdoor: 75, lastSet: { temperature: 40 } }
    expect(wheelShortfalls(evidence({ RF: 27 }, since))).toMatchObject([
      { wheel: 'RF', lacks: 6, why: { byTemperature: -3.3, byLostAir: 9.3, isBeyondError: true } },
    ])
  })

  it('cannot be split without the temperature when the tires were set', () => {
    expect(wheelShortfalls(evidence({ RF: 27 }, cold))).toEqual([
      { wheel: 'RF', lacks: 6, why: 'setting-not-known' },
    ])
  })

  it('cannot be split without the temperature outdoors', () => {
    const without = { tires: 'cold', lastSet: { temperature: 68 } } as const
    expect(wheelShortfalls(evidence({ RF: 27 }, without))).toEqual([
      { wheel: 'RF', lacks: 6, why: 'outdoor-not-known' },
    ])
  })

  it('is not said of a tire within 2 psi of its label, a spare, or a tire that nobody gauged', () => {
    expect(wheelShortfalls(evidence({ LF: 31.1, RF: 34, SP: 40 }))).toEqual([])
  })

  it('is not said where the label is not verified, or the tires have changed places since they were gauged', () => {
    const unverified = { ...evidence({ LF: 27 }), vehicle: { placard: { front: 33, rear: 33 } } }
    const moved: Evidence = {
      ...evidence({ LF: 27 }),
      events: [{ kind: 'moved-since-reading', happened: true }],
    }
    expect([wheelShortfalls(unverified), wheelShortfalls(moved)]).toEqual([[], []])
  })

  it('is said of the cold tire, however warm it was gauged', () => {
    const driven = { ...cold, tires: 'driven', tireTemperature: 80, lastSet: { temperature: 68 } } as const
    const [found] = wheelShortfalls(evidence({ LF: 33 }, driven))
    expect(found).toMatchObject({ wheel: 'LF', lacks: 4.2, why: { byTemperature: 3.3, byLostAir: 0.9 } })
  })
})
