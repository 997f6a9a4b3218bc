import { describe, expect, it } from 'vitest'
import type { Mark } from '../state.ts'
import { markOfEntry } from './entry-places.ts'

const mark = (entryId: string): Mark => ({
  entryId,
  seq: 1,
  by: { kind: 'system' },
  deviceId: null,
  writtenAt: '2026-01-12T16:40:00.000Z',
  kind: 'note.added',
  receivedAt: '2026-01-12T16:40:00.000Z',
  struck: null,
})

describe('the mark of an entry', () => {
  const [one, two, three] = [mark('one'), mark('two'), mark('three')]

  it('is found in a state and in those that continue it', () => {
    expect(markOfEntry({ marks: [] }, 'one')).toBeUndefined()
    expect(markOfEntry({ marks: [one] }, 'one')).toBe(one)
    expect(markOfEntry({ marks: [one, two, three] }, 'three')).toBe(three)
    expect(markOfEntry({ marks: [one, two, three] }, 'four')).toBeUndefined()
  })

  it('is not found in a state from before the entry', () => {
    expect(markOfEntry({ marks: [one, two, three] }, 'three')).toBe(three)
    expect(markOfEntry({ marks: [one, two] }, 'three')).toBeUndefined()
    expect(markOfEntry({ marks: [one, two] }, 'two')).toBe(two)
  })

  it('is found in each of two states that continue the same one differently', () => {
    const other = mark('other')
    const left = { marks: [one, two, three] }
    const right = { marks: [one, two, other] }
    for (const _turn of [1, 2]) {
      expect(markOfEntry(left, 'three')).toBe(three)
      expect(markOfEntry(left, 'other')).toBeUndefined()
      expect(markOfEntry(right, 'other')).toBe(other)
      expect(markOfEntry(right, 'three')).toBeUndefined()
    }
  })
})
