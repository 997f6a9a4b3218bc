import type { AppendResult } from '@bayledger/contract/entries'
import { describe, expect, it } from 'vitest'
import { countTogether, deliveriesOf, joined } from './delivery.ts'
import type { Parcel } from './parcel.ts'

const parcel = (...ids: readonly string[]): Parcel => ({
  orderId: 'order',
  entries: ids.map((id) => ({
    id,
    orderId: 'order',
    kind: 'wheel.checked',
    version: 1,
    payload: {},
    writtenAt: '2026-01-12T16:40:00.000Z',
    restsOn: [],
  })),
  sides: [],
  says: ids.join(', '),
  staffId: 'ines',
  deviceId: 'tablet',
  heardSeq: 3,
  form: null,
})

const taken = (id: string): AppendResult => ({
  result: 'accepted',
  id,
  seq: 4,
  hash: '',
  receivedAt: '2026-01-12T16:41:00.000Z',
  given: {},
})
const refused = (id: string): AppendResult => ({
  result: 'refused',
  id,
  code: 'ORDER_ENDED',
  values: {},
  words: 'The order is over.',
  kept: true,
  fields: [],
})
const notYet = (id: string): AppendResult => ({ result: 'not-yet', id, words: 'Too new.' })

describe('parcels that go together', () => {
  it('are what one person wrote on one tablet to one order, having read as much of it', () => {
    const first = parcel('1')
    for (const other of [
      { ...parcel('2'), orderId: 'second' },
      { ...parcel('2'), staffId: 'bo' },
      { ...parcel('2'), deviceId: null },
      { ...parcel('2'), heardSeq: 4 },
    ])
      expect(countTogether([first, other, parcel('3')])).toBe(1)
    expect(countTogether([first, parcel('2'), parcel('3')])).toBe(3)
    expect(countTogether([])).toBe(0)
  })

  it('hold no more than the server takes; one that holds more by itself goes alone', () => {
    const many = parcel(...Array.from({ length: 60 }, (_, index) => String(index)))
    expect(countTogether([many, parcel('a')])).toBe(1)
    expect(countTogether([parcel('a'), many])).toBe(1)
    const wordy = {
      ...parcel('a'),
      sides: Array.from({ length: 60 }, () => ({ digest: '', salt: '', text: '' })),
    }
    expect(countTogether([wordy, { ...wordy }, parcel('b')])).toBe(1)
  })

  it('are one parcel with the entries of all, in their order', () => {
    const whole = joined([parcel('1', '2'), parcel('3')])
    expect(whole.entries.map(({ id }) => id)).toEqual(['1', '2', '3'])
  })

  it('become each what its own entries became', () => {
    const parcels = [parcel('1', '2'), parcel('3', '4'), parcel('5'), parcel('6')]
    const results = [taken('1'), taken('2'), taken('3'), refused('4'), notYet('5')]
    expect(deliveriesOf(parcels, results, ({ words }) => words)).toEqual([
      { became: 'taken' },
      { became: 'refused', problem: 'The order is over.' },
      { became: 'not-yet', problem: 'Too new.' },
      // The server said nothing of it.
      { became: 'out-of-reach', problem: null },
    ])
  })
})
