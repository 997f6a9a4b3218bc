import type { CalendarDay } from '@bayledger/reckoning/units/calendar-day'
import { expect, it } from 'vitest'
import { tireInspectedOf } from './tire-rows.ts'
import { acrossFault, wearRows } from './wear-rows.ts'

const today = '2026-11-30' as CalendarDay
const read = { treadInner: '4', treadMiddle: '7', treadOuter: '4.5' }

it('takes a tread that was read at three places, and its lowest as the depth where none was typed', () => {
  expect(tireInspectedOf('RF', { ...read, wear: 'cups' }, today)).toMatchObject({
    treadDepth32nds: 4,
    treadAcross: { inner: 4, middle: 7, outer: 4.5 },
    wearSeen: 'cups',
  })
  expect(tireInspectedOf('RF', { ...read, treadTyped: '3' }, today).treadDepth32nds).toBe(3)
  expect(tireInspectedOf('RF', { look: 'sound', tread: '7' }, today)).not.toHaveProperty('treadAcross')
})

it('says under the last reading what it hints at, once all three are there', () => {
  const hint = (values: Record<string, string>) => {
    const row = wearRows(values, 'RF').find(({ key }) => key === 'treadOuter')
    return row?.kind === 'number' ? row.hint : undefined
  }
  expect(hint(read)).toMatch(/^The right front tire has 4\/32, 7\/32 and 4\.5\/32 in .*Too little pressure/)
  expect(hint({ ...read, treadMiddle: '5' })).toMatch(/^Read at all three/)
  expect(hint({ treadInner: '4' })).toMatch(/^Read at all three/)
})

it('does not take one or two of the three', () => {
  expect(acrossFault({ treadInner: '4', treadOuter: '0' })).toMatch(/all three/)
  expect(acrossFault(read)).toBeUndefined()
  expect(acrossFault({ stem: 'sound' })).toBeUndefined()
})
