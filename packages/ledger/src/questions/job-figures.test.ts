import { describe, expect, it } from 'vitest'
import { handBack, oneSensorJob, stageWriters } from '../../test-support/one-sensor-job.ts'
import { advisor } from '../../test-support/shop.ts'
import { jobFigures } from './job-figures.ts'
import { leftToDo } from './left-to-do.ts'

const desk = { by: advisor, deviceId: null }
const count = (steps: Readonly<Record<string, number>>) =>
  Object.values(steps).reduce((sum, one) => sum + one, 0)

describe('what is left to do', () => {
  it('is nothing that could be said before there is a plan, and after the hand-back', () => {
    expect(leftToDo(oneSensorJob('shown').state())).toBeNull()
    expect(leftToDo(oneSensorJob('handed-back').state())).toBeNull()
  })

  it('is the plan’s open steps by what they are, until none is open', () => {
    const decided = oneSensorJob('decided').state()
    const left = leftToDo(decided)
    expect(left).toMatchObject({ begun: false, partAt: null, waitsUntil: null })
    expect(left?.steps).toMatchObject({ 'fit-sensor': 1, 'torque-studs': 3, 'learning-drive': 1 })
    expect(count(left?.steps ?? {})).toBe(decided.plan?.plan.steps.length)
    expect(leftToDo(oneSensorJob('worked').state())).toMatchObject({ steps: {}, begun: true })
  })

  it('names the part that it waits for until the part is drawn', () => {
    const pen = oneSensorJob('decided', 'waits-for-part')
    const promisedAt = '2026-01-14T15:00:00.000Z'
    pen.write('part.promised', { partCode: 'TS-315-C', promisedAt }, desk)
    expect(leftToDo(pen.state())?.partAt).toBe(promisedAt)
    stageWriters.worked(pen)
    expect(leftToDo(pen.state())?.partAt).toBeNull()
  })
})

describe('the figures of an order', () => {
  it('are there once it is over', () => {
    expect(jobFigures(oneSensorJob('sealed').state())).toBeNull()
    const figures = jobFigures(oneSensorJob('handed-back').state())
    expect(figures).toMatchObject({
      ...{ cause: 'sensor-silent', comebackOf: null, job: 'sensor' },
      promises: { first: '2026-01-12T20:00:00.000Z', last: '2026-01-12T20:00:00.000Z' },
      fitted: [{ wheel: 'RR' }],
      failed: [{ wheel: 'RR' }],
    })
    expect(figures?.offered).toContainEqual({ title: 'sensor', answer: 'authorized' })
  })

  it('take a step’s time from the entry of a person before it', () => {
    const {
      steps = [],
      authorized = null,
      readyAt = '',
    } = jobFigures(oneSensorJob('handed-back').state()) ?? {}
    // The pen writes an entry every twenty seconds, and longer where the entry says so.
    expect(Math.min(...steps.map(({ seconds }) => seconds))).toBe(20)
    expect(steps.find(({ code }) => code === 'learning-drive')?.seconds).toBeGreaterThan(60)
    expect(count(authorized?.steps ?? {})).toBe(steps.length)
    expect(Date.parse(readyAt ?? '')).toBeGreaterThan(Date.parse(authorized?.at ?? ''))
  })

  it('keep what was promised first beside what was promised last before it was ready', () => {
    const pen = oneSensorJob('decided', 'promised-again')
    const later = '2026-01-12T21:00:00.000Z'
    pen.write('stay.changed', { waitsHere: true, promisedAt: later }, desk)
    stageWriters.worked(pen)
    pen.write('stay.changed', { waitsHere: true, promisedAt: '2026-01-12T23:00:00.000Z' }, desk)
    stageWriters.sealed(pen)
    pen.write('order.handed_back', handBack, desk)
    expect(jobFigures(pen.state())?.promises).toEqual({ first: '2026-01-12T20:00:00.000Z', last: later })
  })
})
