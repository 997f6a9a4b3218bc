import type { Checklist } from '@bayledger/contract/checklist'
import { describe, expect, it } from 'vitest'
import { checklistItems } from './checklist-items.ts'

const night = '2026-01-12T06:05:00.000Z'
const morning = '2026-01-12T16:40:00.000Z'
const nothing: Checklist = {
  people: { working: 1, bay: 0 },
  instruments: { wrenches: 0, gauges: 0 },
  pricesVersion: 1,
  tablets: 0,
  backups: { state: 'no-key', newestAt: null, keptUpTo: null, onDiskOfData: false },
  hasOrders: false,
}
const left = (list: Checklist) =>
  checklistItems(list, (instant) => instant.slice(11, 16)).filter(({ isThere }) => !isThere)
const withoutOf = (list: Checklist, key: string) =>
  checklistItems(list, (instant) => instant.slice(11, 16)).find((item) => item.key === key)?.without

describe('the checklist of a new shop', () => {
  it('has five lines, each with what stays shut without it', () => {
    expect(left(nothing).map(({ key }) => key)).toEqual([
      'people',
      'instruments',
      'prices',
      'tablet',
      'backups',
    ])
    for (const { without, now } of left(nothing)) expect([without, now]).not.toContain('')
  })

  it('is empty once all of it is there', () => {
    const all: Checklist = {
      people: { working: 3, bay: 2 },
      instruments: { wrenches: 1, gauges: 2 },
      pricesVersion: 2,
      tablets: 1,
      backups: { state: 'fine', newestAt: night, keptUpTo: morning, onDiskOfData: false },
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

  it('says how backups are and what to do on the machine', () => {
    const item = (backups: Checklist['backups']) =>
      checklistItems({ ...nothing, backups }, (instant) => instant.slice(11, 16)).find(
        ({ key }) => key === 'backups',
      )
    const fine = { state: 'fine', newestAt: night, keptUpTo: morning, onDiskOfData: false } as const
    expect(item(fine)).toMatchObject({
      isThere: true,
      now: 'the newest backup is from 06:05, and what was written since is copied up to 16:40',
    })
    expect(item({ ...fine, onDiskOfData: true })).toMatchObject({
      isThere: false,
      without: 'The backups are on the same disk as the shop: if it breaks, both are gone.',
      doWords: expect.stringMatching(/^Set BACKUP_FOLDER to another disk/),
    })
    expect(item(nothing.backups)).toMatchObject({
      isThere: false,
      now: 'no backup',
      doWords: expect.stringMatching(/npm run backup:key, and keep what it shows elsewhere/),
    })
    expect(item({ ...fine, state: 'failing', keptUpTo: null })).toMatchObject({
      isThere: false,
      now: 'the newest backup is from 06:05',
      doWords: expect.stringMatching(/npm run backup\. It says what keeps it/),
    })
  })
})
