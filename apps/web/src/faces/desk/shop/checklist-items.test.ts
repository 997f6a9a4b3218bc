import type { Checklist } from '@bayledger/contract/checklist'
import { describe, expect, it } from 'vitest'
import { checklistItems } from './checklist-items.ts'

const nothing: Checklist = {
  people: { working: 1, bay: 0 },
  instruments: { wrenches: 0, gauges: 0 },
  pricesVersion: 1,
  tablets: 0,
  hasOrders: false,
}
const left = (list: Checklist) => checklistItems(list).filter(({ isThere }) => !isThere)
const withoutOf = (list: Checklist, key: string) =>
  checklistItems(list).find((item) => item.key === key)?.without

describe('the checklist of a new shop', () => {
  it('has four lines, each with what stays shut without it', () => {
    expect(left(nothing).map(({ key }) => key)).toEqual(['people', 'instruments', 'prices', 'tablet'])
    for (const { without, now } of left(nothing)) expect([without, now]).not.toContain('')
  })

  it('is empty once all of it is there', () => {
    const all: Checklist = {
      people: { working: 3, bay: 2 },
      instruments: { wrenches: 1, gauges: 2 },
      pricesVersion: 2,
      tablets: 1,
      hasOrders: true,
    }
    expect(left(all)).toEqual([])
  })

  it('wants a second person for the check of a wheel', () => {
    expect(withoutOf(nothing, 'people')).toMatch(/arrival check stays shut/)
    expect(withoutOf({ ...nothing, people: { working: 2, bay: 1 } }, 'people')).toMatch(/another’s wheel/)
  })

  it('tells a missing wrench from a missing gauge', () => {
    expect(withoutOf({ ...nothing, instruments: { wrenches: 1, gauges: 0 } }, 'instruments')).toBe(
      'No pressure is recorded.',
    )
    expect(withoutOf({ ...nothing, instruments: { wrenches: 0, gauges: 1 } }, 'instruments')).toMatch(
      /No wheel is torqued/,
    )
  })
})
