import { describe, expect, it } from 'vitest'
import { punctureRows, puncturesOf } from './puncture-rows.ts'

const hole = { hole: 'yes', place: 'shoulder', millimeters: '7', degrees: '15', overlap: 'no' }

describe('a hole in a tire', () => {
  it('is asked for in one row, and in four more where there is one', () => {
    expect(punctureRows({}).map(({ key }) => key)).toEqual(['hole'])
    expect(punctureRows({ hole: 'no' }).map(({ key }) => key)).toEqual(['hole'])
    expect(punctureRows(hole).map(({ key }) => key)).toEqual([
      'hole',
      'place',
      'millimeters',
      'degrees',
      'overlap',
    ])
  })

  it('is recorded in millimeters, and shown in inches beside', () => {
    expect(puncturesOf(hole)).toEqual([
      { place: 'shoulder', millimeters: 7, degrees: 15, overlapsRepair: false },
    ])
    expect(punctureRows(hole).find(({ key }) => key === 'millimeters')).toMatchObject({ hint: '0.28 in' })
    expect(puncturesOf({ hole: 'no' })).toEqual([])
  })
})
