import { checksFor } from '@bayledger/reckoning/diagnosis/checks/all-checks'
import { readFacts } from '@bayledger/reckoning/diagnosis/facts/facts'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { describe, expect, it } from 'vitest'
import { type ArrivalTask, nextTask, taskOfField } from './arrival-tasks.ts'

const gauges = (...wheels: WheelPosition[]): ArrivalTask[] =>
  wheels.map((wheel) => ({ what: 'gauge', wheel }))
const sensors = (...wheels: WheelPosition[]): ArrivalTask[] =>
  wheels.map((wheel) => ({ what: 'sensor', wheel }))

describe('what comes after a recorded task', () => {
  it('is the next wheel in reading order while going task by task', () => {
    const order: WheelPosition[] = []
    let left = gauges('LF', 'RF', 'RR', 'LR', 'SP')
    let next: ArrivalTask | null = left[0] ?? null
    while (next !== null && 'wheel' in next) {
      const done: ArrivalTask & { wheel: WheelPosition } = next
      order.push(done.wheel)
      left = left.filter((task) => 'wheel' in task && task.wheel !== done.wheel)
      next = nextTask(left, done, 'task-by-task')
    }
    expect(order).toEqual([...readingOrder])
  })

  it('goes on round the vehicle from where the technician began', () => {
    const left = [...gauges('LF', 'RF', 'LR'), ...sensors('RR')]
    expect(nextTask(left, { what: 'gauge', wheel: 'RR' }, 'task-by-task')).toEqual({
      what: 'gauge',
      wheel: 'LR',
    })
    expect(nextTask(gauges('LF', 'RF'), { what: 'gauge', wheel: 'LR' }, 'task-by-task')).toEqual({
      what: 'gauge',
      wheel: 'LF',
    })
  })

  it('stays at the wheel while going wheel by wheel', () => {
    const left = [...gauges('LF'), ...sensors('RF', 'LF')]
    expect(nextTask(left, { what: 'gauge', wheel: 'RF' }, 'wheel-by-wheel')).toEqual({
      what: 'sensor',
      wheel: 'RF',
    })
  })

  it('is whatever is left when the task is done everywhere, and nothing at the end', () => {
    expect(nextTask(sensors('RR'), { what: 'gauge', wheel: 'SP' }, 'task-by-task')).toEqual({
      what: 'sensor',
      wheel: 'RR',
    })
    expect(nextTask([], { what: 'control-module' }, 'task-by-task')).toBeNull()
  })
})

describe('the pad of a field of the evidence', () => {
  it.each<[string, ArrivalTask]>([
    ['wheels.LR.gauge', { what: 'gauge', wheel: 'LR' }],
    ['wheels.RF.answer', { what: 'sensor', wheel: 'RF', row: 'answer' }],
    ['wheels.SP.followsPressure', { what: 'sensor', wheel: 'SP', row: 'follows' }],
    ['wheels.RR.learnRefusals', { what: 'sensor', wheel: 'RR', row: 'learnRefusals' }],
    ['wheels.LF.stem', { what: 'tire', wheel: 'LF', row: 'stem' }],
    ['wheels.LF.mounted', { what: 'tire', wheel: 'LF', row: 'mounted' }],
    ['light.lampCheck', { what: 'warning-light', row: 'lampCheck' }],
    ['controlModule.ids.RF', { what: 'control-module', row: 'id.RF' }],
    ['controlModule.codes', { what: 'control-module', row: 'codes' }],
    ['strayIds', { what: 'control-module', row: 'stray' }],
    ['surroundings.lastSet.temperature', { what: 'surroundings', row: 'lastSet' }],
    ['surroundings.lastSet.altitude', { what: 'surroundings', row: 'lastSetAltitude' }],
    ['events.sealant', { what: 'event', event: 'sealant', row: 'happened' }],
    ['events.collision.wheel', { what: 'event', event: 'collision', row: 'wheel' }],
    ['vehicle.placard.verified', { what: 'door-label' }],
    ['vehicle.casing.front', { what: 'tire', wheel: 'LF', row: 'casing' }],
    ['vehicle.casing.spare', { what: 'tire', wheel: 'SP', row: 'casing' }],
  ])('opens for %s at its row', (field, task) => {
    expect(taskOfField(field)).toEqual(task)
  })

  it('is there for each fact of wheels, module, light, surroundings and events that the rules can need', () => {
    const facts = readFacts({
      units: { pressure: 'psi', temperature: 'F', altitude: 'ft' },
      vehicle: { system: 'direct', spare: 'full-size', spareMonitored: true },
      wheels: Object.fromEntries(
        readingOrder.map((wheel) => [wheel, { gauge: 35, answer: 'answered', id: `A${wheel.length}` }]),
      ),
      controlModule: { state: 'read', ids: { LF: 'A1' } },
    })
    // A tire is looked at from inside in the work, not on arrival.
    for (const { field } of checksFor(facts))
      if (!/^(vehicle|history)\.|^light\.reported$|\.insideTire$/.test(field))
        expect(taskOfField(field), field).not.toBeNull()
  })

  it('is none for what is in papers', () => {
    for (const field of [
      'light.reported',
      'vehicle.placard.front',
      'vehicle.warnAt.rear',
      'history.ourWorkOn',
    ])
      expect(taskOfField(field)).toBeNull()
  })
})
