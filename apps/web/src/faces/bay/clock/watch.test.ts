import { describe, expect, it } from 'vitest'
import { secondsOf, startWatch, stopWatch, timedBy } from './watch.ts'

/** `ahead`: by how much the server's clock is ahead of that of the day, where that is known. */
const at = (ofTheDay: number, steady: number, pageOpenedAt = 1, ahead: number | null = null) => ({
  ofTheDay: () => ofTheDay,
  steady: () => steady,
  pageOpenedAt,
  serverAheadMs: () => ahead,
})
const noon = Date.parse('2026-01-12T17:00:00.000Z')
const minutes = (count: number) => count * 60_000
const startedAt = '2026-01-12T17:00:00.000Z'

describe('a watch', () => {
  const left = startWatch(at(noon, 5_000), { out: '50001' })
  const heard = startWatch(at(noon, 5_000, 1, minutes(3)))

  it('says how long it ran while the tablet was awake, by its steady clock, in whole seconds', () => {
    const awake = at(noon + 48_900, 5_000 + 48_950)
    expect(secondsOf(left, awake)).toBe(48)
    expect(timedBy(left, awake)).toEqual({ startedAt, seconds: 48 })
  })

  it.each([
    [
      'while the tablet slept, so that its steady clock stood still',
      left,
      at(noon + minutes(22), 9_000),
      { seconds: 22 * 60, across: { steadySeconds: 4, corrected: false } },
    ],
    [
      'while it slept, and the server bears it out',
      heard,
      at(noon + minutes(22), 9_000, 1, minutes(3)),
      { seconds: 22 * 60, across: { steadySeconds: 4, corrected: true } },
    ],
    [
      'when it was started anew',
      left,
      at(noon + minutes(22), 800, 2),
      { seconds: 22 * 60, across: { steadySeconds: null, corrected: false } },
    ],
    [
      'when it was started anew with its clock set ahead by an hour, which the server knows',
      heard,
      at(noon + minutes(82), 800, 2, minutes(-57)),
      { seconds: 22 * 60, across: { steadySeconds: null, corrected: true } },
    ],
    [
      'when it was started anew and its clock set back: nothing, by the day',
      left,
      at(noon - 1, 800, 2),
      { seconds: 0, across: { steadySeconds: null, corrected: false } },
    ],
    [
      'when its clock was set back while it was awake: both are said',
      left,
      at(noon - minutes(30), 5_000 + minutes(22)),
      { seconds: 0, across: { steadySeconds: 22 * 60, corrected: false } },
    ],
    [
      'when its clock was set back while it was awake, which the server knows: the steady clock',
      heard,
      at(noon - minutes(30), 5_000 + minutes(22), 1, minutes(55)),
      { seconds: 22 * 60 },
    ],
  ])('says how long it ran %s', (_, watch, now, said) => {
    expect(timedBy(watch, now)).toEqual({ startedAt, ...said })
  })

  it('says what it said when it was stopped, however late it is read', () => {
    const back = stopWatch(left, at(noon + minutes(22), 9_000))
    expect(timedBy(back, at(noon + minutes(90), 0, 3))).toEqual({
      startedAt,
      seconds: 22 * 60,
      across: { steadySeconds: 4, corrected: false },
    })
    expect(back.kept).toEqual({ out: '50001' })
  })

  it('that nobody started, or that ran for more than a week, times nothing', () => {
    expect(timedBy(null, at(noon, 0))).toBeNull()
    expect(timedBy(left, at(noon + minutes(7 * 24 * 60 + 1), 0, 2))).toBeNull()
  })
})
