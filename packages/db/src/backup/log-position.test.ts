import { describe, expect, it } from 'vitest'
import { parsePosition, parseSegmentName, segmentAt, segmentName } from './log-position.ts'

const megabyte = 1024 * 1024

describe('a place in the log', () => {
  // The second, but for its timeline: pg_walfile_name of PostgreSQL 18.4. The others: the rule of its manual, 28.6.
  it.each([
    ['0/3000148', 1, 16 * megabyte, '000000010000000000000003'],
    ['1A/FF000000', 7, 16 * megabyte, '000000070000001A000000FF'],
    ['0/300000', 1, megabyte, '000000010000000000000003'],
    ['2/FFFFFFFF', 1, megabyte, '000000010000000200000FFF'],
  ])('%s on timeline %i lies in the file that PostgreSQL names', (text, timeline, bytes, name) => {
    const segment = segmentAt(timeline, parsePosition(text), bytes)
    expect(segmentName(segment, bytes)).toBe(name)
    expect(parseSegmentName(name, bytes)).toEqual(segment)
  })

  it('goes on from the last file of a part to the first of the next', () => {
    const last = parseSegmentName('0000000100000000000000FF', 16 * megabyte)
    expect(segmentName({ ...last, number: last.number + 1n }, 16 * megabyte)).toBe('000000010000000100000000')
  })
})
