import { expect, it } from 'vitest'
import { oneSensorJob } from '../../test-support/one-sensor-job.ts'
import { before } from '../../test-support/refusals/setting.ts'
import { lead } from '../../test-support/shop.ts'
import { closingOf } from '../../test-support/step-payload.ts'
import { torqueClock } from './torque-clock.ts'

it('adds up the rounds that count and says how long after the last the wheel was checked', () => {
  const checkKey = 'RR.studs.second-check'
  const pen = before(checkKey)
  expect(torqueClock(pen.state(), 'RR')).toEqual({ seconds: 48, checkedAfterMinutes: null })
  const step = pen.state().plan?.plan.steps.find(({ stepKey }) => stepKey === checkKey)
  if (!step) throw new RangeError(checkKey)
  for (let note = 0; note < 17; note += 1)
    pen.draft('sensor.broken', { wheel: 'LF', how: 'waits' }, { by: lead })
  const { kind, payload } = closingOf(pen.state(), step)
  pen.write(kind, payload, { by: lead })
  expect(torqueClock(pen.state(), 'RR')).toEqual({ seconds: 48, checkedAfterMinutes: 6 })
})

it('says nothing of a wheel with a round that nobody timed, or that stayed on', () => {
  const state = oneSensorJob('worked').state()
  const work = state.work.RR
  const full = work?.rounds.full
  if (!work || !full) throw new RangeError('the wheel was torqued')
  const untimed = { ...work, rounds: { ...work.rounds, full: { ...full, timed: null } } }
  expect(torqueClock({ ...state, work: { ...state.work, RR: untimed } }, 'RR').seconds).toBeNull()
  expect(torqueClock(state, 'LF')).toEqual({ seconds: null, checkedAfterMinutes: null })
})
