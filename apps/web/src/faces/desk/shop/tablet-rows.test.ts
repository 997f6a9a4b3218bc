import { describe, expect, it } from 'vitest'
import { recordFaultsOf } from '../../../ui/record/record-rows.ts'
import { tabletContent, tabletLine, tabletRows, tabletValues } from './tablet-rows.ts'

const place = '3f1c7a52-0d1e-4c55-9b6e-6c1f0b7d2a01'
const places = [{ value: place, label: 'Tamber Street' }]
const content = { name: 'Cart 2', locationId: place, isOut: false }
const clock = { timeZone: 'America/New_York' }
const now = '2026-01-12T16:40:00.000Z'
const kept = (change: object, facts: object = {}) => ({
  id: place,
  version: 1,
  content: { ...content, ...change },
  facts: { enrolledAt: now, lastSeenAt: null, heldOrders: 0, refusedEntries: 0, unsent: null, ...facts },
})

describe('a tablet as rows', () => {
  it('comes back as it was, in use or out', () => {
    for (const one of [content, { ...content, isOut: true }]) {
      const values = tabletValues(one)
      expect(recordFaultsOf(tabletRows(places)(values), values)).toEqual({})
      expect(tabletContent(values)).toEqual(one)
    }
  })

  it.each([
    [kept({}), 'Tamber Street · nobody has signed in on it'],
    [
      kept({}, { lastSeenAt: '2026-01-12T16:05:00.000Z', heldOrders: 1 }),
      'Tamber Street · last seen 11:05\u00a0AM · holds 1 open order, to which it may still write',
    ],
    [
      kept({ isOut: true }, { lastSeenAt: '2026-01-09T21:05:00.000Z', heldOrders: 2, refusedEntries: 3 }),
      'Tamber Street · put out · last seen Jan 9, 4:05\u00a0PM · holds 2 open orders, to which it may still write · 3 refused entries wait in the tray',
    ],
    [
      kept({}, { unsent: { entries: 3, photos: 1, toldAt: '2026-01-12T16:05:00.000Z' } }),
      'Tamber Street · nobody has signed in on it · 3 entries and 1 photo waited on it at its last contact, 11:05\u00a0AM',
    ],
    [
      kept({}, { unsent: { entries: 0, photos: 0, toldAt: '2026-01-12T16:05:00.000Z' } }),
      'Tamber Street · nobody has signed in on it · nothing waited on it at its last contact, 11:05\u00a0AM',
    ],
    [kept({ locationId: 'elsewhere' }), 'a place that is not known · nobody has signed in on it'],
  ])('%#: the list says where it is, when it was seen, and what may still come', (tablet, line) => {
    expect(tabletLine(tablet, places, now, clock)).toBe(line)
  })
})
