import { describe, expect, it } from 'vitest'
import { stemTorqueDoubts, torqueDoubts, torqueWords } from './plausible-torque.ts'

describe('a wheel torque', () => {
  it('inside the usual band of its stud raises no doubt', () => {
    expect(torqueDoubts('M14×1.5', { value: 180, unit: 'N·m' })).toEqual([])
    expect(torqueDoubts('M12×1.5', { value: 83, unit: 'lbf·ft' })).toEqual([])
  })

  it('that is usual in both units must be checked against the unit of the source', () => {
    expect(torqueDoubts('M14×1.5', { value: 140, unit: 'lbf·ft' })).toEqual([
      { code: 'usual-in-other-units', units: ['N·m'] },
    ])
  })

  it('that would be usual in the other unit says so', () => {
    expect(torqueDoubts('M12×1.5', { value: 80, unit: 'N·m' })).toEqual([
      {
        code: 'outside-the-usual',
        usual: { low: 65, high: 115, unit: 'lbf·ft' },
        meant: ['lbf·ft'],
      },
    ])
  })

  it('that is outside in every unit sends back to the source', () => {
    expect(torqueDoubts('1/2-20', { value: 12, unit: 'lbf·ft' })).toEqual([
      { code: 'outside-the-usual', usual: { low: 70, high: 115, unit: 'lbf·ft' }, meant: [] },
    ])
  })

  it('for a thread that the table does not hold raises no doubt', () => {
    expect(torqueDoubts('M20×2.5', { value: 400, unit: 'N·m' })).toEqual([])
  })

  it('for a thread that cannot be read needs the thread first', () => {
    expect(torqueDoubts('M12', { value: 80, unit: 'lbf·ft' })).toEqual([
      {
        code: 'thread-unreadable',
        refusal: expect.objectContaining({ fault: 'not-a-thread', found: 'M12' }),
      },
    ])
  })

  it('typed in lbf·in may be of either other unit', () => {
    expect(torqueDoubts('M12x1.5', { value: 100, unit: 'lbf·in' })).toMatchObject([
      { code: 'outside-the-usual', meant: ['lbf·ft', 'N·m'] },
    ])
  })

  it('of many hundreds may be a figure in lbf·in', () => {
    expect(torqueDoubts('M12×1.5', { value: 960, unit: 'lbf·ft' })).toMatchObject([{ meant: ['lbf·in'] }])
    expect(torqueDoubts('M12×1.5', { value: 960, unit: 'lbf·in' })).toEqual([])
  })

  it.each([
    ['M10×1.25', 35, 65],
    ['M12×1.25', 65, 115],
    ['M12×1.5', 65, 115],
    ['M12×1.75', 65, 115],
    ['M14×1.25', 80, 165],
    ['M14×1.5', 80, 165],
    ['M16×1.5', 120, 220],
    ['7/16-20', 50, 85],
    ['1/2-20', 70, 115],
    ['9/16-18', 100, 180],
    ['5/8-18', 120, 220],
  ])('for %s is usual from %i to %i lbf·ft and no further', (thread, low, high) => {
    const isOutside = (value: number) =>
      torqueDoubts(thread, { value, unit: 'lbf·ft' }).some(({ code }) => code === 'outside-the-usual')
    expect([low - 0.1, low, high, high + 0.1].map(isOutside)).toEqual([true, false, false, true])
  })

  it('is shown in the unit of its source first, then in the other', () => {
    expect(torqueWords({ value: 100, unit: 'lbf·ft' })).toBe('100 lbf·ft (136 N·m)')
    expect(torqueWords({ value: 160, unit: 'N·m' })).toBe('160 N·m (118 lbf·ft)')
    expect(torqueWords({ value: 62, unit: 'lbf·in' })).toBe('62 lbf·in (7.0 N·m)')
  })
})

describe('the torque of a stem part', () => {
  it.each([
    ['stem-nut', { value: 62, unit: 'lbf·in' }],
    ['stem-nut', { value: 106, unit: 'lbf·in' }],
    ['stem-nut', { value: 8, unit: 'N·m' }],
    ['valve-core', { value: 4, unit: 'lbf·in' }],
    ['valve-core', { value: 0.45, unit: 'N·m' }],
  ] as const)('%s of %o raises no doubt', (part, torque) => {
    expect(stemTorqueDoubts(part, torque)).toEqual([])
  })

  it.each([
    ['stem-nut', { value: 62, unit: 'lbf·ft' }, ['lbf·in']],
    ['stem-nut', { value: 62, unit: 'N·m' }, ['lbf·in']],
    ['stem-nut', { value: 7, unit: 'lbf·in' }, ['N·m']],
    ['stem-nut', { value: 29.9, unit: 'lbf·in' }, []],
    ['stem-nut', { value: 110.1, unit: 'lbf·in' }, []],
    ['valve-core', { value: 4, unit: 'lbf·ft' }, ['lbf·in']],
    ['valve-core', { value: 1.9, unit: 'lbf·in' }, []],
    ['valve-core', { value: 5.1, unit: 'lbf·in' }, []],
  ] as const)('%s of %o is usual in %j only', (part, torque, meant) => {
    expect(stemTorqueDoubts(part, torque)).toMatchObject([{ code: 'outside-the-usual', meant }])
  })

  it('comes with the usual band in the unit of its sources', () => {
    expect(stemTorqueDoubts('valve-core', { value: 4, unit: 'N·m' })).toMatchObject([
      { usual: { low: 2, high: 5, unit: 'lbf·in' } },
    ])
  })
})
