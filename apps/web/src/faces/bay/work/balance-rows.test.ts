import { describe, expect, it } from 'vitest'
import type { RowValues } from '../../../ui/rows/rows.ts'
import { rowFault, rowsOpen } from '../form/rows.ts'
import { balanceLeft, balanceRows } from './balance-rows.ts'

const rows = (values: RowValues, on: 'car' | 'light-truck' = 'car') => balanceRows(values, on)
const openIn = (values: RowValues, on: 'car' | 'light-truck' = 'car') =>
  rowsOpen(rows(values, on), values).map(({ key }) => key)
const faultAt = (key: string, values: Record<string, string>) => {
  const row = rows(values).find((one) => one.key === key)
  return row && rowFault(row, values[key])
}
const leftOf = (values: RowValues) => balanceLeft(values, 'car')
const figures = { shows: 'figures', balancedAgain: false }

describe('what is left after balancing', () => {
  it('is recorded by one press where nothing is left, or the machine shows no figure', () => {
    for (const shows of ['nothing', 'no-figure']) expect(openIn({ shows })).toEqual([])
    expect(leftOf({ shows: 'nothing' })).toEqual({ ...figures, unit: 'oz', inner: 0, outer: 0 })
    expect(leftOf({ shows: 'no-figure' })).toEqual({ shows: 'no-figure' })
  })

  it('needs both sides in the unit of the machine', () => {
    expect(leftOf({ shows: 'oz', inner: '0.25', outer: '.3' })).toEqual({
      ...figures,
      unit: 'oz',
      inner: 0.25,
      outer: 0.3,
    })
    expect(leftOf({ shows: 'g', inner: '5', outer: '0' })).toMatchObject({ unit: 'g', inner: 5, outer: 0 })
    expect(leftOf({ shows: 'g', inner: '5' })).toBeNull()
    expect(openIn({ shows: 'g', inner: '5' })).toEqual(['outer'])
  })

  it('over what a side may have asks whether the wheel was balanced again', () => {
    const over = { shows: 'oz', inner: '0.5', outer: '0' }
    expect(openIn(over)).toEqual(['again'])
    expect(openIn(over, 'light-truck')).toEqual([])
    const again = { ...over, again: 'stays' }
    expect(openIn(again)).toEqual([])
    expect(leftOf(again)).toMatchObject({ inner: 0.5, balancedAgain: true })
    expect(leftOf({ ...again, inner: '0.25' })).toMatchObject({ balancedAgain: false })
  })

  it('refuses more than a balancer shows, and says what is allowed', () => {
    expect(faultAt('inner', { shows: 'oz', inner: '25' })).toMatch(/0.*12/)
    expect(faultAt('outer', { shows: 'g', outer: '351' })).toMatch(/0.*350/)
    expect(faultAt('outer', { shows: 'g', outer: '350' })).toBeUndefined()
  })

  it('names the usual limit in the same unit', () => {
    const hint = (shows: string, on: 'car' | 'light-truck') =>
      rows({ shows }, on).flatMap((row) => (row.kind === 'number' ? [row.hint] : []))[0]
    expect(hint('g', 'car')).toMatch(/^At most 10 g a side is usual here/)
    expect(hint('oz', 'car')).toMatch(/^At most 0\.35 oz/)
    expect(hint('oz', 'light-truck')).toMatch(/^At most 1\.06 oz/)
  })
})
