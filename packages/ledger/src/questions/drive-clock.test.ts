import { describe, expect, it } from 'vitest'
import { bay, before, closeStep, desk, lastOf } from '../../test-support/refusals/setting.ts'
import { wordsOf } from '../../test-support/seeded-ids.ts'
import { advisor } from '../../test-support/shop.ts'
import type { OrderState } from '../state.ts'
import { driveDoubt } from './drive-clock.ts'
import { openSteps, proofOf } from './gates.ts'
import { nextMoves } from './moves.ts'
import { openHolds } from './open-holds.ts'

const drive = 'vehicle.proof.drive'
const timed = (minutes: number, seconds = 0) => ({
  startedAt: '2026-01-12T15:40:00.000Z',
  seconds: minutes * 60 + seconds,
})

/** The one-sensor job with one proof drive of these minutes, and of these by the tablet's clock. */
const driven = (minutes: number, clock: { startedAt: string; seconds: number } | null) => {
  const pen = before(drive)
  const appended = closeStep<'drive.done'>(pen, drive, { minutes, timed: clock })
  if (!appended.admitted) throw new Error(appended.code)
  return { pen, holds: appended.entry.given.holds ?? [] }
}

describe('a drive that the tablet timed', () => {
  it.each([
    [22, timed(22, 40), 22],
    [22, timed(21, 30), 21],
    [20, timed(35), 20],
    [25, timed(24), 24],
  ])(
    'of %d min proves by the lesser of what was typed and the whole minutes of %j',
    (typed, clock, counts) => {
      const { pen, holds } = driven(typed, clock)
      expect(holds).toEqual([])
      expect(proofOf(pen.state())).toEqual({ verdict: 'proven', minutes: counts })
    },
  )

  it('of 20 min that were a few seconds under 20 by the clock is not yet proven', () => {
    const { pen } = driven(20, timed(19, 50))
    expect(proofOf(pen.state())).toEqual({
      verdict: 'not-yet-proven',
      why: 'not-driven-enough',
      minutes: 19,
      needed: 20,
    })
  })

  it('is kept with the minutes as typed where the clock contradicts them, and proves nothing', () => {
    const { pen, holds } = driven(22, timed(3, 10))
    expect(holds).toEqual([
      {
        code: 'drive-minutes-doubtful',
        gate: 'proof',
        wheel: null,
        values: { typed: 22, clock: 3, by: 'timed' },
      },
    ])
    const state = pen.state()
    expect(state.drives).toMatchObject([{ minutes: 22, timed: { seconds: 190 } }])
    expect(proofOf(state)).toEqual({
      verdict: 'not-yet-proven',
      why: 'drive-doubtful',
      minutes: 3,
      needed: 20,
    })
    expect(openSteps(state)[0]?.stepKey).toBe(drive)
    expect(nextMoves(state, pen.now()).map(({ code }) => code)).toEqual(['drive-open', 'drive-doubtful'])
  })

  it('waits for a person even where its minutes by the clock would do', () => {
    const { pen } = driven(36, timed(22))
    expect(proofOf(pen.state())).toMatchObject({ verdict: 'not-yet-proven', why: 'drive-doubtful' })
  })
})

describe('a drive that nobody timed', () => {
  it('a few minutes after the vehicle was last worked on is contradicted by the entries', () => {
    const { pen, holds } = driven(18, null)
    expect(holds).toMatchObject([{ code: 'drive-minutes-doubtful', values: { typed: 18, by: 'entries' } }])
    expect(proofOf(pen.state())).toMatchObject({ verdict: 'not-yet-proven', why: 'drive-doubtful' })
  })

  it('counts as typed where the entries leave it the time', () => {
    const pen = before(drive)
    const state = pen.state()
    const moment = { writtenAt: '2026-01-12T23:00:00.000Z', now: '2026-01-12T23:00:00.000Z' }
    expect(driveDoubt(state, { minutes: 22, timed: null }, moment)).toBeNull()
  })

  it('is contradicted only where the clock of the device and that of the server both do', () => {
    const state = before(drive).state()
    const writtenAt = pressureTime(state)
    expect(
      driveDoubt(state, { minutes: 22, timed: null }, { writtenAt, now: '2026-01-12T23:00:00.000Z' }),
    ).toBeNull()
    expect(driveDoubt(state, { minutes: 22, timed: null }, { writtenAt, now: writtenAt })).not.toBeNull()
  })
})

describe('a vehicle that has left', () => {
  const leave = (pen: ReturnType<typeof before>) =>
    pen.attempt('drive.left', { stepKey: drive, odometerOut: { value: 71_940, unit: 'mi' } }, bay)

  it('is out for everybody until it is back, and the drive says when it left', () => {
    const pen = before(drive)
    expect(leave(pen)).toMatchObject({ admitted: true })
    expect(pen.state().onTheRoad).toMatchObject({ stepKey: drive, odometerOut: { value: 71_940 } })
    expect(openSteps(pen.state())[0]?.stepKey).toBe(drive)
    closeStep<'drive.done'>(pen, drive, { minutes: 22, timed: timed(22) })
    expect(pen.state().onTheRoad).toBeNull()
    expect(pen.state().drives[0]?.left?.entryId).toBe(lastOf(pen, 'drive.left'))
  })

  it('has not left where that is withdrawn', () => {
    const pen = before(drive)
    leave(pen)
    pen.strike(lastOf(pen, 'drive.left'), advisor)
    expect(pen.state().onTheRoad).toBeNull()
  })

  it('cannot have been out for longer than since then, whoever types the minutes', () => {
    const pen = before(drive)
    leave(pen)
    const left = pen.state().onTheRoad?.written.writtenAt ?? ''
    const after = (minutes: number) => new Date(Date.parse(left) + minutes * 60_000).toISOString()
    const doubt = (typed: number, minutes: number) =>
      driveDoubt(
        pen.state(),
        { minutes: typed, timed: null },
        { writtenAt: after(minutes), now: after(minutes) },
      )
    expect(doubt(22, 22)).toBeNull()
    expect(doubt(22, 5)).toEqual({ typed: 22, clock: 5, by: 'entries' })
  })

  it('does not leave while the road is shut, nor for a step that is no drive', () => {
    const pen = before('RR.studs.second-check')
    expect(leave(pen)).toMatchObject({ admitted: false })
    const other = { stepKey: 'RR.studs.second-check', odometerOut: { value: 1, unit: 'mi' } } as const
    expect(pen.attempt('drive.left', other, bay)).toMatchObject({
      admitted: false,
      code: 'STEP_OF_OTHER_KIND',
    })
  })
})

describe('minutes that the clock contradicts', () => {
  it('count when a person has settled them, and no longer when that is withdrawn', () => {
    const { pen } = driven(22, timed(3))
    const settled = pen.write(
      'hold.settled',
      { entryId: lastOf(pen, 'drive.done'), words: wordsOf('the tablet was left on the bench') },
      desk,
    )
    expect(openHolds(pen.state())).toEqual([])
    expect(pen.state().settledHolds).toMatchObject([
      {
        hold: { code: 'drive-minutes-doubtful', values: { typed: 22, clock: 3 } },
        words: wordsOf('the tablet was left on the bench'),
        written: { entryId: settled.id },
      },
    ])
    expect(proofOf(pen.state())).toEqual({ verdict: 'proven', minutes: 22 })
    expect(openSteps(pen.state())[0]?.stepKey).toBe('vehicle.relearn.done')
    pen.strike(settled.id, advisor)
    expect(pen.state().settledHolds).toEqual([])
    expect(proofOf(pen.state())).toMatchObject({ verdict: 'not-yet-proven', why: 'drive-doubtful' })
    expect(openSteps(pen.state())[0]?.stepKey).toBe(drive)
  })

  it('hold nothing after a drive of which the clock says enough', () => {
    const { pen } = driven(22, timed(3))
    closeStep<'drive.done'>(pen, drive, { minutes: 21, timed: timed(21) })
    expect(proofOf(pen.state())).toEqual({ verdict: 'proven', minutes: 21 })
  })

  it('are no doubt of a drive that is withdrawn', () => {
    const { pen } = driven(22, timed(3))
    pen.strike(lastOf(pen, 'drive.done'), advisor)
    expect(openHolds(pen.state())).toEqual([])
    expect(proofOf(pen.state())).toEqual({
      verdict: 'not-yet-proven',
      why: 'not-driven-enough',
      minutes: 0,
      needed: 20,
    })
  })
})

describe('a drive longer than the order is old', () => {
  it('is refused with both, and closes nothing', () => {
    const pen = before(drive)
    const answer = closeStep<'drive.done'>(pen, drive, { minutes: 120, timed: null })
    expect(answer).toMatchObject({
      admitted: false,
      code: 'DRIVE_LONGER_THAN_ORDER',
      values: { minutes: 120 },
    })
    expect(pen.state().drives).toEqual([])
    expect(openSteps(pen.state())[0]?.stepKey).toBe(drive)
  })
})

/** When the vehicle was last worked on, by the device. */
const pressureTime = (state: OrderState): string =>
  Object.values(state.work)
    .flatMap(({ pressure }) => pressure?.written.writtenAt ?? [])
    .toSorted()
    .at(-1) ?? ''
