import { describe, expect, it } from 'vitest'
import { rowFault } from '../form/rows.ts'
import { punctureRows, puncturesOf } from './puncture-rows.ts'

const hole = { hole: 'yes', place: 'shoulder', millimeters: '7', degrees: '15', overlap: 'no' }

describe('a hole in a tire', () => {
  it('is asked for in one row, and in four more where there is one, then for another', () => {
    expect(punctureRows({}).map(({ key }) => key)).toEqual(['hole'])
    expect(punctureRows({ hole: 'no' }).map(({ key }) => key)).toEqual(['hole'])
    expect(punctureRows(hole).map(({ key }) => key)).toEqual([
      'hole',
      'place',
      'millimeters',
      'degrees',
      'overlap',
      'hole2',
    ])
  })

  it('is recorded in millimeters, and shown in inches beside', () => {
    expect(puncturesOf(hole)).toEqual([
      { place: 'shoulder', millimeters: 7, degrees: 15, overlapsRepair: false },
    ])
    expect(punctureRows(hole).find(({ key }) => key === 'millimeters')).toMatchObject({ hint: '0.28 in' })
    expect(puncturesOf({ hole: 'no' })).toEqual([])
  })

  it('of 60 mm is answered at once: a hole has 0.5 to 50 mm', () => {
    const width = punctureRows(hole).find(({ key }) => key === 'millimeters')
    expect(width && rowFault(width, '60')).toMatch(/60 mm cannot be: allowed is 0.5 to 50 mm/)
  })

  it('beside another is recorded with the distance between them, and whether their units overlap', () => {
    const two = {
      ...hole,
      hole2: 'yes',
      place2: 'crown',
      millimeters2: '4',
      degrees2: '0',
      overlap2: 'no',
      apart2: '90',
      units2: 'no',
    }
    expect(punctureRows(two).map(({ key }) => key)).toEqual(
      expect.arrayContaining(['apart2', 'units2', 'hole3']),
    )
    expect(puncturesOf(two)).toEqual([
      { place: 'shoulder', millimeters: 7, degrees: 15, overlapsRepair: false },
      {
        place: 'crown',
        millimeters: 4,
        degrees: 0,
        overlapsRepair: false,
        fromOthers: { millimeters: 90, unitsOverlap: false },
      },
    ])
  })

  it('seen from outside has a place and a width as far as they show', () => {
    expect(punctureRows({}, 'outside').map(({ key }) => key)).toEqual(['place', 'millimeters', 'hole2'])
    expect(puncturesOf({ place: 'crown', millimeters: null }, 'outside')).toEqual([
      { place: 'crown', millimeters: null, degrees: null, overlapsRepair: null },
    ])
    expect(puncturesOf({ place: null }, 'outside')).toMatchObject([{ place: null }])
  })
})
