import { PlaceContent } from '@bayledger/contract/places'
import { describe, expect, it } from 'vitest'
import { tamberStreet } from '../../../../../../prisma/seeds/demo/places.ts'
import { recordFaultsOf } from '../../../ui/record/record-rows.ts'
import { hoursFrom, placeContent, placeRows, placeValues } from './place-rows.ts'

const { id: _id, ...demo } = tamberStreet
const home = PlaceContent.parse(demo)

describe('a place as rows', () => {
  it('comes back as it was', () => {
    const values = placeValues(home)
    expect(recordFaultsOf(placeRows(values), values)).toEqual({})
    expect(placeContent(values)).toEqual(home)
  })

  it.each([
    { kind: 'none' },
    { kind: 'percent', percentThousandths: 12_500, capCents: 2_550 },
    { kind: 'percent', percentThousandths: 10_000, capCents: null },
    { kind: 'amount', cents: 1_000 },
    { kind: 'greater-of', percentThousandths: 10_000, cents: 2_500, capCents: null },
    { kind: 'lesser-of', percentThousandths: 10_000, cents: 5_000 },
  ] as const)('keeps the rule %o to the cent and the thousandth of a percent', (overrun) => {
    const content = { ...home, lawProfile: { ...home.lawProfile, overrun } }
    const values = placeValues(content)
    expect(recordFaultsOf(placeRows(values), values)).toEqual({})
    expect(placeContent(values)).toEqual(content)
  })

  it.each([
    ['7:30-17:30', { opens: '07:30', closes: '17:30' }],
    ['07:30 – 17:30', { opens: '07:30', closes: '17:30' }],
    ['', null],
    ['all day', undefined],
    ['07:30-25:00', undefined],
  ])('reads the hours "%s"', (typed, hours) => {
    expect(hoursFrom(typed)).toEqual(hours)
  })

  it('says at the row of a day that it closes before it opens', () => {
    const values = { ...placeValues(home), 'hours.0': '17:30-07:30', bays: '-1' }
    expect(recordFaultsOf(placeRows(values), values)).toEqual({
      'hours.0': 'It closes before it opens.',
      bays: '-1 cannot be: allowed is 0 to 200. Read it again.',
    })
  })
})
