import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { describe, expect, it } from 'vitest'
import { oneSensorJob, tireOf } from '../../test-support/one-sensor-job.ts'
import { technician } from '../../test-support/shop.ts'
import type { OrderState, TireRecord } from '../state.ts'
import { evidenceOf } from './evidence-of.ts'
import { sizeComparedAt, tireAgeSeen } from './sidewall-seen.ts'

const bay = { by: technician }

const looked = (prints: Partial<Record<WheelPosition, Partial<TireRecord>>>): OrderState => {
  const pen = oneSensorJob('checked')
  for (const [wheel, seen] of Object.entries(prints))
    pen.write('tire.inspected', tireOf(wheel as WheelPosition, seen), bay)
  return pen.state()
}

describe('what a sidewall says', () => {
  it('is kept beside what an earlier look saw, and erased by no later one that says nothing of it', () => {
    const pen = oneSensorJob('checked')
    pen.write('tire.inspected', tireOf('LF', { sizeSeen: { readable: true, text: '235/60R18 103H' } }), bay)
    pen.write('tire.inspected', tireOf('LF', { dateCodeSeen: { readable: false, why: 'worn-off' } }), bay)
    expect(pen.state().arrival.tires.LF).toMatchObject({
      sizeSeen: { readable: true, text: '235/60R18 103H' },
      dateCodeSeen: { readable: false, why: 'worn-off' },
    })
  })

  it('gives the age by the week of the code, to the report and to the rules, where nobody entered one', () => {
    const state = looked({
      LF: { dateCodeSeen: { readable: true, text: 'DOT 1A4 2BCDEF 0115' } },
    })
    const tire = state.arrival.tires.LF
    if (!tire) throw new RangeError('the tire was not looked at')
    // Week 1 of 2015 begins on 4 January 2015; the order is of 12 January 2026.
    expect(tireAgeSeen(tire)).toMatchObject({ fullYears: 11, atLeast: false })
    const unaged = { ...state.arrival, tires: { LF: { ...tire, tireAgeYears: null } } }
    expect(evidenceOf({ ...state, arrival: unaged }, null).wheels?.LF?.tireAgeYears).toBe(11)
  })

  it('is compared with the size of the sheet', () => {
    const state = looked({
      LF: { sizeSeen: { readable: true, text: '235/60R18 103H' } },
      RF: { sizeSeen: { readable: true, text: '235/55R18 100H' } },
      RR: { sizeSeen: { readable: false, why: 'covered' } },
    })
    expect(sizeComparedAt(state, 'LF')).toMatchObject({ isOtherSize: false })
    expect(sizeComparedAt(state, 'RF')).toMatchObject({ isOtherSize: true })
    expect(sizeComparedAt(state, 'RR')).toBeNull()
    expect(sizeComparedAt(state, 'LR')).toBeNull()
  })
})

describe('the plies of a light truck tire', () => {
  /** A vehicle whose label asks for 80 psi, all at 62 in air as warm as when they were set: 77.5 %, and 80 is the limit. */
  const truck = (plies: Partial<Record<WheelPosition, 'steel' | 'polyester'>>): string[] => {
    const state = looked(
      Object.fromEntries(Object.entries(plies).map(([wheel, casing]) => [wheel, { casing }])),
    )
    if (!state.sheet || !state.surroundings) throw new RangeError('the order has no sheet')
    const { sheet } = state.sheet
    const tire = { size: 'LT235/85R16 E', loadClass: 'LT-E', sidewallMaximumPsi: 80 } as const
    const printed = { psi: 80, kPa: 550 }
    const evidence = evidenceOf(
      {
        ...state,
        sheet: {
          ...state.sheet,
          sheet: {
            ...sheet,
            placard: { front: printed, rear: printed, spare: null },
            tire: { front: tire, rear: tire, spare: null },
          },
        },
      },
      null,
    )
    const gauges = Object.fromEntries(
      (['LF', 'RF', 'RR', 'LR'] as const).map((wheel) => [
        wheel,
        { ...evidence.wheels?.[wheel], gauge: wheel === 'LF' ? 62 : 80, answer: null, sensorPressure: null },
      ]),
    )
    const { surroundings } = evidence
    return diagnose({
      ...evidence,
      wheels: gauges,
      surroundings: { ...surroundings, outdoor: 68, lastSet: { temperature: 68 } },
    }).findings.map(({ code }) => code)
  }

  it('decide whether it may be broken inside, from what the sidewalls say', () => {
    expect(truck({})).toContain('run-low-damage-possible')
    expect(truck({ LF: 'steel', RF: 'polyester' })).toContain('run-low-damage-possible')
    // One that nobody read may be of steel.
    expect(truck({ LF: 'polyester' })).toContain('run-low-damage-possible')
    expect(truck({ LF: 'polyester', RF: 'polyester' })).not.toContain('run-low-damage-possible')
  })
})
