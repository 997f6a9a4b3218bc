import { describe, expect, it } from 'vitest'
import { torqueDoubts, torqueWords } from './plausible-torque.ts'

describe('a wheel torque', () => {
  it('inside the usual band of its stud raises no doubt', () => {
    expect(torqueDoubts('M14×1.5', { value: 180, unit: 'N·m' })).toEqual([])
    expect(torqueDoubts('M12×1.5', { value: 83, unit: 'lbf·ft' })).toEqual([])
  })

  it('that is usual in both units asks which one the source prints', () => {
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

  it('is shown in the unit of its source first, then in the other', () => {
    expect(torqueWords({ value: 100, unit: 'lbf·ft' })).toBe('100 lbf·ft (136 N·m)')
    expect(torqueWords({ value: 160, unit: 'N·m' })).toBe('160 N·m (118 lbf·ft)')
    expect(torqueWords({ value: 62, unit: 'lbf·in' })).toBe('62 lbf·in (7.0 N·m)')
  })
})
