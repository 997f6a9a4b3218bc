import { describe, expect, it } from 'vitest'
import { stemTorqueDoubts, torqueDoubts, torqueWords } from './plausible-torque.ts'

describe('a wheel torque', () => {
  it('inside the usual band of its stud raises no doubt', () => {
    expect(torqueDoubts('M14×1.5', { value: 180, unit: 'N·m' })).toEqual([])
    expect(torqueDoubts('M12×1.5', { value: 83, unit: 'lbf·ft' })).toEqual([])
  })

  it('that is usual in both units must be checked against the unit of the source', () => {
    expect(torqueDoubts('M14×1.5', { value: 140, unit: 'lbf·ft' })).toEqual([
      '140 is usual for M14×1.5 in lbf·ft and in N·m: see which unit the source prints.',
    ])
  })

  it('that would be usual in the other unit says so', () => {
    expect(torqueDoubts('M12×1.5', { value: 80, unit: 'N·m' })).toEqual([
      '80 N·m (59 lbf·ft) is outside the usual 65 to 115 lbf·ft for M12×1.5.',
      'Is it 80 lbf·ft?',
    ])
  })

  it('that is outside in every unit sends back to the source', () => {
    expect(torqueDoubts('1/2-20', { value: 12, unit: 'lbf·ft' })).toEqual([
      '12 lbf·ft (16 N·m) is outside the usual 70 to 115 lbf·ft for 1/2-20.',
      'Read the source again.',
    ])
  })

  it('for a thread that the table does not hold raises no doubt', () => {
    expect(torqueDoubts('M20×2.5', { value: 400, unit: 'N·m' })).toEqual([])
  })

  it('for a thread that cannot be read needs the thread first', () => {
    expect(torqueDoubts('M12', { value: 80, unit: 'lbf·ft' })).toEqual([
      expect.stringMatching(/^The thread "M12" cannot be read: it needs a metric thread with its pitch/),
    ])
  })

  it('typed in lbf·in may be of either other unit', () => {
    expect(torqueDoubts('M12x1.5', { value: 100, unit: 'lbf·in' })).toEqual([
      '100 lbf·in (11.3 N·m) is outside the usual 65 to 115 lbf·ft for M12x1.5.',
      'Is it 100 lbf·ft or 100 N·m?',
    ])
  })

  it('of many hundreds may be a figure in lbf·in', () => {
    expect(torqueDoubts('M12×1.5', { value: 960, unit: 'lbf·ft' })[1]).toBe('Is it 960 lbf·in?')
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
      torqueDoubts(thread, { value, unit: 'lbf·ft' }).some((words) => words.includes('outside'))
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
    ['stem nut', { value: 62, unit: 'lbf·in' }],
    ['stem nut', { value: 106, unit: 'lbf·in' }],
    ['stem nut', { value: 8, unit: 'N·m' }],
    ['valve core', { value: 4, unit: 'lbf·in' }],
    ['valve core', { value: 0.45, unit: 'N·m' }],
  ] as const)('%s of %o raises no doubt', (part, torque) => {
    expect(stemTorqueDoubts(part, torque)).toEqual([])
  })

  it.each([
    ['stem nut', { value: 62, unit: 'lbf·ft' }, 'Is it 62 lbf·in?'],
    ['stem nut', { value: 62, unit: 'N·m' }, 'Is it 62 lbf·in?'],
    ['stem nut', { value: 7, unit: 'lbf·in' }, 'Is it 7 N·m?'],
    ['stem nut', { value: 29.9, unit: 'lbf·in' }, 'Read the source again.'],
    ['stem nut', { value: 110.1, unit: 'lbf·in' }, 'Read the source again.'],
    ['valve core', { value: 4, unit: 'lbf·ft' }, 'Is it 4 lbf·in?'],
    ['valve core', { value: 1.9, unit: 'lbf·in' }, 'Read the source again.'],
    ['valve core', { value: 5.1, unit: 'lbf·in' }, 'Read the source again.'],
  ] as const)('%s of %o: %s', (part, torque, question) => {
    expect(stemTorqueDoubts(part, torque)).toEqual([
      expect.stringMatching(new RegExp(`outside the usual .* for a ${part}\\.$`)),
      question,
    ])
  })

  it('says the usual band in the unit of its sources', () => {
    expect(stemTorqueDoubts('valve core', { value: 4, unit: 'N·m' })[0]).toBe(
      '4 N·m (3 lbf·ft) is outside the usual 2 to 5 lbf·in for a valve core.',
    )
  })
})
