import { describe, expect, it } from 'vitest'
import { measured } from '../../test-support/measured-size.ts'
import { type TireOnRoad, tiresApart } from './tread-apart.ts'

const size = measured('225/65R17 102H')
const at = (depth: number, of: TireOnRoad['size'] = size): TireOnRoad => ({
  tread: { value: depth, unit: '1/32 in' },
  size: of,
})

describe('tires apart', () => {
  it('at 10/32 against 2/32 are far over both limits', () => {
    const apart = tiresApart({ LF: at(10), RF: at(2) })
    expect(apart).toMatchObject({ wheels: ['LF', 'RF'], isTreadOver: true, isAroundOver: true })
    expect(apart?.treadApart).toBeCloseTo(6.35, 9)
    expect(apart?.aroundApart).toBeCloseTo(2 * Math.PI * 6.35, 9)
  })

  it('at 2/32 of difference are not over in tread, and over a quarter of an inch around', () => {
    expect(tiresApart({ LF: at(8), RF: at(8), RR: at(10), LR: at(10) })).toMatchObject({
      wheels: ['LF', 'RF', 'RR', 'LR'],
      isTreadOver: false,
      isAroundOver: true,
    })
    expect(tiresApart({ LF: at(9), RF: at(10) })).toMatchObject({ isTreadOver: false, isAroundOver: false })
  })

  it('of different sizes are apart around with the same tread, and unknown where a size says no diameter', () => {
    expect(tiresApart({ LF: at(8), RF: at(8, measured('235/65R17 104H')) })).toMatchObject({
      isTreadOver: false,
      isAroundOver: true,
    })
    expect(tiresApart({ LF: at(8), RF: at(8, null) })).toMatchObject({
      aroundApart: null,
      isAroundOver: null,
    })
    expect(tiresApart({ LF: at(8) })).toBeNull()
  })
})
