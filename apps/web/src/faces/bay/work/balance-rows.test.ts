import { describe, expect, it } from 'vitest'
import { rowFault, rowsOpen } from '../form/rows.ts'
import { balanceRows, balanceWords } from './balance-rows.ts'

const faultAt = (key: string, values: Record<string, string>) => {
  const row = balanceRows(values).find((one) => one.key === key)
  return row && rowFault(row, values[key])
}

describe('what is left after balancing', () => {
  it('is recorded by one press where nothing is left, or the machine shows no figure', () => {
    for (const shows of ['nothing', 'no-figure'])
      expect(rowsOpen(balanceRows({ shows }), { shows })).toEqual([])
    expect(balanceWords({ shows: 'nothing' })).toBe('0 oz left, inner and outer')
    expect(balanceWords({ shows: 'no-figure' })).toBe('the machine shows no figure')
  })

  it('needs both sides in the unit of the machine', () => {
    expect(balanceWords({ shows: 'oz', inner: '0.25', outer: '.5' })).toBe(
      '0.25 oz left inside, 0.5 oz outside',
    )
    expect(balanceWords({ shows: 'g', inner: '5', outer: '0' })).toBe('5 g left inside, 0 g outside')
    expect(balanceWords({ shows: 'g', inner: '5' })).toBeNull()
    expect(rowsOpen(balanceRows({ shows: 'g' }), { shows: 'g', inner: '5' }).map(({ key }) => key)).toEqual([
      'outer',
    ])
  })

  it('refuses more than a balancer shows, and says what is allowed', () => {
    expect(faultAt('inner', { shows: 'oz', inner: '25' })).toMatch(/0.*12/)
    expect(faultAt('outer', { shows: 'g', outer: '351' })).toMatch(/0.*350/)
    expect(faultAt('outer', { shows: 'g', outer: '350' })).toBeUndefined()
  })

  it('names the usual limit in the same unit', () => {
    const hints = (shows: string) =>
      balanceRows({ shows }).flatMap((row) => (row.kind === 'number' ? [row.hint] : []))
    expect(hints('g')[0]).toMatch(/^At most 10 g a side is usual on a car, 30 g on a light truck/)
    expect(hints('oz')[1]).toMatch(/^At most 0\.35 oz a side is usual on a car, 1\.06 oz on a light truck/)
  })
})
