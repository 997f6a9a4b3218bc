import { describe, expect, it } from 'vitest'
import { doneAt, openStretches } from './open-hours.ts'
import { secondsAhead, secondsAheadOfNext } from './people-free.ts'
import { nextPromise, promiseSlips } from './promise-slips.ts'
import { readyError } from './ready-error.ts'
import { aboutTime, readyTime, secondsOfSteps } from './ready-time.ts'
import { learnSeconds, median, secondsOfStep } from './step-seconds.ts'

const at = (clock: string, day = '2026-01-12') => Date.parse(`${day}T${clock}:00-05:00`)
const open = { opens: '07:30', closes: '18:00' }
const week = [open, open, open, open, open, { opens: '08:00', closes: '14:00' }, null]
const hours = (from: number) => openStretches(week, 'America/New_York', from)
const minutes = (count: number) => count * 60

describe('what a place takes for a step', () => {
  const times = (...seconds: number[]) => seconds.map((one) => ({ code: 'open-tire', seconds: one }) as const)

  it('is our own figure until five were seen, then their median', () => {
    expect(secondsOfStep('open-tire', learnSeconds(times(100, 100, 100, 100)))).toBe(240)
    expect(secondsOfStep('open-tire', learnSeconds(times(100, 90, 110, 95, 105)))).toBe(100)
  })

  it('does not move for lunch breaks, other vehicles and clocks that run backwards', () => {
    const day = times(100, 90, 3_600, 110, -40, 95, 105, 52_000)
    expect(learnSeconds(day)).toEqual({ 'open-tire': 100 })
    const withLunches = times(100, 90, 110, 95, 105, 1_700, 1_600)
    expect(secondsOfStep('open-tire', learnSeconds(withLunches))).toBe(105)
  })

  it('believes the newest forty', () => {
    const faster = times(...Array<number>(40).fill(60), ...Array<number>(200).fill(300))
    expect(learnSeconds(faster)).toEqual({ 'open-tire': 60 })
  })

  it('lets a drive take longer than a pause', () => {
    const drives = Array.from({ length: 5 }, () => ({ code: 'proof-drive', seconds: 2_400 }) as const)
    expect(learnSeconds(drives)).toEqual({ 'proof-drive': 2_400 })
  })

  it('has a median of an even number of times, and none of none', () => {
    expect(median([4, 1, 3, 2])).toBe(2.5)
    expect(median([])).toBeNull()
  })
})

describe('the ready time', () => {
  const ready = (change: Partial<Parameters<typeof readyTime>[0]>) => {
    const now = change.now ?? at('10:00')
    const nothing = { workSeconds: minutes(40), aheadSeconds: 0, waitsUntil: null, partAt: null }
    return readyTime({ now, ...nothing, open: hours(now), ...change })
  }

  it('is now and what is left, after what is ahead', () => {
    expect(ready({})).toEqual({ is: 'about', at: at('10:40'), partAt: null })
    expect(ready({ aheadSeconds: minutes(30) })).toMatchObject({ at: at('11:10') })
    expect(secondsOfSteps({ 'open-tire': 2, relearn: 1 }, { 'open-tire': 100 })).toBe(620)
  })

  it('is tomorrow for what is not ready at closing, and Monday after Saturday', () => {
    expect(ready({ now: at('17:40') })).toMatchObject({ at: at('07:50', '2026-01-13') })
    expect(ready({ now: at('13:50', '2026-01-17') })).toMatchObject({ at: at('08:00', '2026-01-19') })
    expect(ready({ now: at('03:00') })).toMatchObject({ at: at('08:10') })
  })

  it('is not before a part that is waited for has come, nor before a wait is over', () => {
    expect(ready({ partAt: at('15:00') })).toEqual({ is: 'about', at: at('15:40'), partAt: at('15:00') })
    expect(ready({ partAt: at('15:00'), waitsUntil: at('16:00') })).toMatchObject({ at: at('16:40') })
  })

  it('says that there is no date when a part was promised for a time that has passed', () => {
    expect(ready({ partAt: at('09:00') })).toEqual({ is: 'part-without-date' })
  })

  it('is not known beyond two weeks', () => {
    expect(ready({ workSeconds: minutes(60) * 24 * 14 })).toBeNull()
  })

  it('counts around the clock where no hours are on file', () => {
    const always = openStretches(Array(7).fill(null), 'America/New_York', at('23:00'))
    expect(doneAt(at('23:00'), minutes(90), always)).toBe(at('00:30', '2026-01-13'))
  })

  it('keeps to the clock where it changes', () => {
    // 2026-03-08 at 02:00 clocks go forward in this zone: IANA time zone database. The Monday after it opens at 07:30 there.
    const friday = Date.parse('2026-03-07T18:50:00Z')
    expect(
      readyTime({
        ...{ now: friday, workSeconds: minutes(20), aheadSeconds: 0 },
        waitsUntil: null,
        partAt: null,
        open: hours(friday),
      }),
    ).toMatchObject({ at: Date.parse('2026-03-09T11:40:00Z') })
  })

  it('is said to five minutes when it is near and to a quarter of an hour when it is far', () => {
    expect(aboutTime(at('10:41'), at('10:00'))).toBe(at('10:45'))
    expect(aboutTime(at('15:31'), at('10:00'))).toBe(at('15:45'))
  })
})

describe('what is ahead of an order', () => {
  const job = (orderId: string, workMinutes: number, begun = false) => ({
    orderId,
    workSeconds: minutes(workMinutes),
    begun,
  })

  it('is taken in turn by whoever is free first', () => {
    const jobs = [job('a', 60, true), job('b', 30), job('c', 20), job('d', 10)]
    const ahead = (people: number) => Object.fromEntries(secondsAhead(jobs, people))
    expect(ahead(1)).toEqual({ a: 0, b: minutes(60), c: minutes(90), d: minutes(110) })
    expect(ahead(2)).toEqual({ a: 0, b: 0, c: minutes(30), d: minutes(50) })
    expect(ahead(0)).toEqual(ahead(1))
    // One that came since is behind all of them.
    expect([0, 1, 2, 5].map((people) => secondsAheadOfNext(jobs, people))).toEqual(
      [120, 120, 60, 0].map(minutes),
    )
  })
})

describe('a promise', () => {
  const slips = (ready: string, slipped: boolean) =>
    promiseSlips({ readyAt: at(ready), promisedAt: at('15:00'), slipped })

  it('slips after ten minutes, and stays until the estimate is back within it', () => {
    expect(['15:00', '15:05', '15:10', '15:11'].map((ready) => slips(ready, false))).toEqual([
      false,
      false,
      false,
      true,
    ])
    expect(['15:11', '15:05', '15:00'].map((ready) => slips(ready, true))).toEqual([true, true, false])
  })

  it('is made anew so that it does not slip at once', () => {
    const promisedAt = nextPromise(at('15:41'))
    expect(promisedAt).toBe(at('16:00'))
    expect(promiseSlips({ readyAt: at('15:41') + 10 * 60_000, promisedAt, slipped: true })).toBe(false)
  })
})

describe('what estimates were worth', () => {
  it('is how far they were off, early or late', () => {
    const off = (by: number) => ({ estimated: at('15:00'), wasReady: at('15:00') + by * 60_000 })
    expect(readyError([off(-10), off(15), off(40)])).toEqual({ count: 3, medianMinutes: 15, within15: 2 })
    expect(readyError([])).toEqual({ count: 0, medianMinutes: null, within15: 0 })
  })
})
