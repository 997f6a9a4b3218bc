import type { OrderState } from '@bayledger/ledger/state'
import { describe, expect, it } from 'vitest'
import { reportContext } from '../../test-support/worked-context.ts'
import { workedState } from '../../test-support/worked-state.ts'
import { composeReportContent } from '../compose-content.ts'
import { durationWords, torqueClockWords } from './clock-words.ts'

describe('what the clock says on a report', () => {
  it.each([
    [0, '0 s'],
    [48, '48 s'],
    [60, '1 min'],
    [125, '2 min 5 s'],
    [1_300, '21 min'],
  ])('%d seconds are %s', (seconds, words) => {
    expect(durationWords(seconds)).toBe(words)
  })

  it.each([
    [{ seconds: 48, checkedAfterMinutes: 6 }, 'torqued in 48 s, checked 6 min later'],
    [{ seconds: null, checkedAfterMinutes: 0 }, 'checked within a minute'],
    [{ seconds: 48, checkedAfterMinutes: null }, 'torqued in 48 s'],
    [{ seconds: null, checkedAfterMinutes: null }, null],
  ])('of a wheel: %j is %s', (clock, words) => {
    expect(torqueClockWords(reportContext, clock)).toBe(words)
  })
})

describe('the pages behind the first', () => {
  const textOf = (state: OrderState): string =>
    JSON.stringify(composeReportContent(state, reportContext).sections)
  const [drive] = workedState.drives
  if (!drive) throw new RangeError('the worked order was driven')

  it('say how long torque, relearn, the watched light and the drive took', () => {
    const text = textOf(workedState)
    expect(text).toContain('By the tablet’s clock, right rear: torqued in 48 s, checked 1 min later.')
    expect(text).toContain('; it took 2 min 30 s by the tablet’s clock.')
    expect(text).toContain('; watched for 2 min 5 s by the tablet’s clock.')
    expect(text).toContain('{"kind":"words","text":"23 min"}')
  })

  it('say of a drive that the tablet slept or was started anew meanwhile', () => {
    const slept = 'The tablet slept or was started anew during this drive'
    expect(textOf(workedState)).not.toContain(slept)
    const timed = { startedAt: '2026-01-12T17:00:00.000Z', seconds: 1_380 }
    const across = { steadySeconds: null, corrected: true }
    expect(textOf({ ...workedState, drives: [{ ...drive, timed: { ...timed, across } }] })).toContain(slept)
  })

  it('print the minutes as typed and the clock’s where they differ, and say where nothing was timed', () => {
    const values = { typed: 22, clock: 0, by: 'entries' } as const
    const hold = { code: 'drive-minutes-doubtful', gate: 'proof', wheel: null, values } as const
    const text = textOf({
      ...workedState,
      drives: [{ ...drive, minutes: 22, timed: null }],
      holds: [{ ...hold, written: drive.written }],
    })
    expect(text).toContain('22 min were written down for this drive; the clock has time for 0.')
    expect(text).toContain('{"kind":"gap","text":"not timed"}')
    expect(text).toContain(
      'Not sure yet: the minutes that were written down for the drive and those of the clock differ.',
    )
  })
})
