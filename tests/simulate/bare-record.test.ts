import { expect, it } from 'vitest'
import { oneSensorJob } from '../../packages/ledger/test-support/one-sensor-job.ts'
import { looseWheels } from './bare-record.ts'

const job = oneSensorJob('handed-back').entries()

it('finds a wheel loose from when it came off until the second person has checked it', () => {
  const off = job.findIndex(({ kind }) => kind === 'wheel.removed')
  const checked = job.findIndex(({ kind }) => kind === 'torque.checked')
  for (const [index] of job.entries())
    expect(looseWheels(job.slice(0, index + 1))).toEqual(index >= off && index < checked ? ['RR'] : [])
})

it('finds it loose again where its torque is withdrawn', () => {
  const torqued = job.find(({ kind, payload }) => kind === 'studs.torqued' && 'round' in payload)
  const strike = {
    id: 'x',
    kind: 'entry.struck' as const,
    given: {},
    receivedAt: null,
    payload: { entryId: torqued?.id ?? '' },
  }
  const full = job.findLast((entry) => entry.kind === 'studs.torqued' && entry.payload.round === 'full')
  expect(
    looseWheels([...job, { ...strike, payload: { ...strike.payload, entryId: full?.id ?? '' } } as never]),
  ).toEqual(['RR'])
})

it('counts the first of two records of a step, whether the server has marked the second or not', () => {
  const full = job.findLast((entry) => entry.kind === 'studs.torqued' && entry.payload.round === 'full')
  if (!full) throw new Error('no round was sealed')
  const again = { ...full, id: 'again' }
  const holds = [
    { code: 'heard-late', gate: 'seal', wheel: 'RR', values: { refusal: 'STEP_ALREADY_CLOSED' } } as const,
  ]
  expect(looseWheels([...job, again])).toEqual(['RR'])
  expect(looseWheels([...job, { ...again, given: { holds } }])).toEqual([])
  expect(looseWheels([...job, { ...again, receivedAt: null }])).toEqual([])
  // The second one counts as soon as the first is withdrawn.
  const strike = { ...full, id: 'x', kind: 'entry.struck' as const, payload: { entryId: full.id } } as never
  expect(looseWheels([...job, strike, { ...again, given: { holds } }])).toEqual(['RR'])
})
