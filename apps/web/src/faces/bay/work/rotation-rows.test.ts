import { expect, it } from 'vitest'
import type { RowValues } from '../../../ui/rows/rows.ts'
import { rowFault, rowsOpen } from '../form/rows.ts'
import { rotationRows, tiresSeenOf } from './rotation-rows.ts'

const asked = { moved: ['LF', 'RF', 'RR', 'LR'], unread: ['RR', 'LR'], bySheet: '235/60R18' } as const
const keysOf = (values: RowValues, of = asked) => rotationRows(values, of).map(({ key }) => key)
const seen = (values: RowValues) => tiresSeenOf(values, asked)

it('two presses say that no tire has an arrow and all are as the sheet has them', () => {
  const values = { arrow: 'none', sizes: 'as-sheet' }
  expect(rowsOpen(rotationRows({}, asked), {}).map(({ key }) => key)).toEqual(['arrow', 'sizes'])
  expect(rowsOpen(rotationRows(values, asked), values)).toEqual([])
  expect(seen(values)).toEqual({ arrows: [], sizes: {} })
  expect(seen({ arrow: 'none' })).toBeNull()
})

it('sizes are not asked for where the arrival check has read them', () => {
  const allRead = { ...asked, unread: [] }
  expect(rotationRows({}, allRead).map(({ key }) => key)).toEqual(['arrow'])
  expect(tiresSeenOf({ arrow: 'all' }, allRead)).toEqual({ arrows: ['LF', 'RF', 'RR', 'LR'], sizes: {} })
})

it('arrows are said wheel by wheel where only some have one', () => {
  expect(keysOf({ arrow: 'some' })).toEqual(['arrow', 'arrows', 'sizes'])
  const values = { arrow: 'some', sizes: 'as-sheet' }
  expect(seen(values)).toBeNull()
  expect(seen({ ...values, arrows: 'RR,LF' })?.arrows).toEqual(['LF', 'RR'])
  expect(seen({ ...values, arrows: 'none' })?.arrows).toEqual([])
  expect(seen({ ...values, arrow: 'none', arrows: 'RR' })?.arrows).toEqual([])
})

it('another size is typed at its wheel, and one press takes it at the next', () => {
  const values = { arrow: 'none', sizes: 'other', 'size.RR': '275/35r18 103h', 'size.LR': null }
  expect(seen(values)?.sizes).toEqual({ RR: '275/35R18 103H' })
  expect(seen({ ...values, sizes: 'as-sheet' })?.sizes).toEqual({})
  const [, , right, left] = rotationRows(values, asked)
  expect(left?.kind === 'text' && left.suggestions).toEqual([
    { value: '275/35R18 103H', label: '275/35R18 103H' },
  ])
  expect(right && rowFault(right, 'about 275')).toMatch(/./)
})
