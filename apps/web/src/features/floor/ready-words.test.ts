import type { FloorRow } from '@bayledger/contract/orders'
import { describe, expect, it } from 'vitest'
import { rowTimes } from './ready-words.ts'
import { untilNamed } from './until-words.ts'

const asOf = '2026-01-12T16:40:00.000Z'
const clock = { timeZone: 'America/New_York' }
const about = (at: string): FloorRow['ready'] => ({ is: 'about', at, partAt: null })
const wait = (reason: string) => ({
  ...{ mover: 'waiting-until', code: 'wait', wheel: null, values: { reason }, words: 'It waits.' },
  ...{ since: asOf, until: '2026-01-19T14:00:00.000Z' },
})
const times = (changes: object): string => {
  const row = { isOpen: true, promisedAt: null, ready: null, moves: [], ...changes } as unknown as FloorRow
  const { ready, due } = rowTimes(row, asOf, clock)
  return [ready, due]
    .filter((part) => part !== null)
    .join(', ')
    .replaceAll('\u00a0', ' ')
}

describe('the times at the end of a row', () => {
  it('are when it is ready and by when that was promised, each half of the day said once', () => {
    const promisedAt = '2026-01-12T19:30:00.000Z'
    expect(times({ promisedAt, ready: about('2026-01-12T19:35:00.000Z') })).toBe('about 2:35, by 2:30 PM')
    expect(times({ promisedAt, ready: about('2026-01-12T16:55:00.000Z') })).toBe('about 11:55 AM, by 2:30 PM')
    expect(times({ promisedAt, ready: about('2026-01-13T19:35:00.000Z') })).toBe(
      'about Jan 13, 2:35 PM, by 2:30 PM',
    )
    expect(times({ ready: about('2026-01-12T19:35:00.000Z') })).toBe('about 2:35 PM')
    expect(times({ promisedAt, ready: { is: 'part-without-date' } })).toBe('part without a date, by 2:30 PM')
  })

  it('leave out when it is ready where the sentence says it', () => {
    const moves = [{ mover: 'desk', code: 'promise-slips', since: null, until: null }]
    const ready = about('2026-01-12T19:35:00.000Z')
    expect(times({ promisedAt: '2026-01-12T16:00:00.000Z', ready, moves })).toBe('late, 11:00 AM')
  })

  it('are the day that was agreed with the customer, in place of the promise', () => {
    const promisedAt = '2026-01-12T15:30:00.000Z'
    expect(times({ promisedAt, moves: [wait('trial-drive')] })).toBe('until Jan 19, 9:00 AM')
    expect(times({ promisedAt, moves: [wait('weather')] })).toBe('late, 10:30 AM')
    expect(times({ moves: [wait('weather')] })).toBe('until Jan 19, 9:00 AM')
  })
})

describe('a sentence', () => {
  it('has the time that was named for its end', () => {
    expect(untilNamed('Waiting for the part.', asOf, () => '9:00 AM')).toBe(
      'Waiting for the part, until 9:00 AM.',
    )
    expect(untilNamed('Waiting for the part.', null, () => '')).toBe('Waiting for the part.')
  })
})
