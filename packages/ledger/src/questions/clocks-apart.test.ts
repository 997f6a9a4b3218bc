import { describe, expect, it } from 'vitest'
import { before, closeStep } from '../../test-support/refusals/setting.ts'
import { Timed } from '../timed.ts'
import { clocksApart } from './clocks-apart.ts'
import { proofOf } from './gates.ts'

const startedAt = '2026-01-12T15:40:00.000Z'
const minutes = (count: number) => count * 60

describe('the two clocks of a tablet', () => {
  it.each([
    ['agree where it was awake', undefined, null],
    ['agree within two minutes', { steadySeconds: minutes(20), corrected: false }, null],
    ['cannot be compared where it was started anew', { steadySeconds: null, corrected: false }, null],
    ['differ by a sleep that the server bears out', { steadySeconds: minutes(1), corrected: true }, null],
    [
      'contradict each other by a sleep that nobody knows of',
      { steadySeconds: minutes(1), corrected: false },
      60,
    ],
    [
      'contradict each other where the day had less time than passed',
      { steadySeconds: minutes(30), corrected: true },
      minutes(22),
    ],
  ])('%s', (_, across, lesser) => {
    const timed = { startedAt, seconds: minutes(22), ...(across && { across }) }
    expect(Timed.parse(timed)).toEqual(timed)
    expect(clocksApart(timed)).toBe(lesser)
  })

  it('hold the proof of a drive where they contradict each other, and the lesser counts meanwhile', () => {
    const drive = 'vehicle.proof.drive'
    const pen = before(drive)
    const appended = closeStep<'drive.done'>(pen, drive, {
      minutes: 22,
      timed: { startedAt, seconds: minutes(22), across: { steadySeconds: minutes(14), corrected: false } },
    })
    if (!appended.admitted) throw new Error(appended.code)
    expect(appended.entry.given.holds).toEqual([
      {
        code: 'drive-minutes-doubtful',
        gate: 'proof',
        wheel: null,
        values: { typed: 22, clock: 14, by: 'clocks' },
      },
    ])
    expect(proofOf(pen.state())).toMatchObject({
      verdict: 'not-yet-proven',
      why: 'drive-doubtful',
      minutes: 14,
    })
  })
})
