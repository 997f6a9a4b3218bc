import { describe, expect, it } from 'vitest'
import { secondsOf, startWatch, stopWatch, timedBy } from './watch.ts'

const at = (ofTheDay: number, steady: number, pageOpenedAt = 1) => ({
  ofTheDay: () => ofTheDay,
  steady: () => steady,
  pageOpenedAt,
})
const noon = Date.parse('2026-01-12T17:00:00.000Z')
const minutes = (count: number) => count * 60_000

describe('a watch', () => {
  const left = startWatch(at(noon, 5_000), { out: '50001' })

  it.each([
    ['while the page is open', at(noon + minutes(22), 5_000 + minutes(22)), 22 * 60],
    [
      'when the clock of the day was set back meanwhile',
      at(noon - minutes(30), 5_000 + minutes(22)),
      22 * 60,
    ],
    ['when the tablet slept, so that its steady clock stopped', at(noon + minutes(22), 9_000), 22 * 60],
    ['when the page was reloaded', at(noon + minutes(22), 800, 2), 22 * 60],
    ['when the page was reloaded and the clock set back: nothing', at(noon - 1, 800, 2), 0],
    ['in whole seconds', at(noon + 48_900, 5_000 + 48_900), 48],
  ])('says how long it ran %s', (_, now, seconds) => {
    expect(secondsOf(left, now)).toBe(seconds)
  })

  it('says what it said when it was stopped, however late it is read', () => {
    const back = stopWatch(left, at(noon + minutes(22), 5_000 + minutes(22)))
    expect(timedBy(back, at(noon + minutes(90), 0, 3))).toEqual({
      startedAt: '2026-01-12T17:00:00.000Z',
      seconds: 22 * 60,
    })
    expect(back.kept).toEqual({ out: '50001' })
  })

  it('that nobody started, or that ran for more than a week, times nothing', () => {
    expect(timedBy(null, at(noon, 0))).toBeNull()
    expect(timedBy(left, at(noon + minutes(7 * 24 * 60 + 1), 0, 2))).toBeNull()
  })
})
