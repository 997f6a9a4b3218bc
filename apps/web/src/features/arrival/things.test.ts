import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { describe, expect, it } from 'vitest'
import { type Thing, thingAfter, thingOfField } from './things.ts'

const gauges = (...wheels: WheelPosition[]): Thing[] => wheels.map((wheel) => ({ what: 'gauge', wheel }))
const sensors = (...wheels: WheelPosition[]): Thing[] => wheels.map((wheel) => ({ what: 'sensor', wheel }))

describe('what comes after a recorded thing', () => {
  it('is the next wheel in reading order while going task by task', () => {
    const order: WheelPosition[] = []
    let left = gauges('LF', 'RF', 'RR', 'LR', 'SP')
    let next: Thing | null = left[0] ?? null
    while (next !== null && 'wheel' in next) {
      const done: Thing & { wheel: WheelPosition } = next
      order.push(done.wheel)
      left = left.filter((thing) => 'wheel' in thing && thing.wheel !== done.wheel)
      next = thingAfter(left, done, 'task-by-task')
    }
    expect(order).toEqual([...readingOrder])
  })

  it('goes on round the vehicle from where the technician began', () => {
    const left = [...gauges('LF', 'RF', 'LR'), ...sensors('RR')]
    expect(thingAfter(left, { what: 'gauge', wheel: 'RR' }, 'task-by-task')).toEqual({
      what: 'gauge',
      wheel: 'LR',
    })
    expect(thingAfter(gauges('LF', 'RF'), { what: 'gauge', wheel: 'LR' }, 'task-by-task')).toEqual({
      what: 'gauge',
      wheel: 'LF',
    })
  })

  it('stays at the wheel while going wheel by wheel', () => {
    const left = [...gauges('LF'), ...sensors('RF', 'LF')]
    expect(thingAfter(left, { what: 'gauge', wheel: 'RF' }, 'wheel-by-wheel')).toEqual({
      what: 'sensor',
      wheel: 'RF',
    })
  })

  it('is whatever is left when the task is done everywhere, and nothing at the end', () => {
    expect(thingAfter(sensors('RR'), { what: 'gauge', wheel: 'SP' }, 'task-by-task')).toEqual({
      what: 'sensor',
      wheel: 'RR',
    })
    expect(thingAfter([], { what: 'control-module' }, 'task-by-task')).toBeNull()
  })
})

describe('the pad of a field of the evidence', () => {
  it('is found by the field', () => {
    expect(thingOfField('wheels.LR.gauge')).toEqual({ what: 'gauge', wheel: 'LR' })
    expect(thingOfField('wheels.SP.followsPressure')).toEqual({ what: 'sensor', wheel: 'SP' })
    expect(thingOfField('wheels.LF.stem')).toEqual({ what: 'tire', wheel: 'LF' })
    expect(thingOfField('light.lampCheck')).toEqual({ what: 'warning-light' })
    expect(thingOfField('controlModule.ids.RF')).toEqual({ what: 'control-module' })
    expect(thingOfField('surroundings.lastSet.temperature')).toEqual({ what: 'surroundings' })
  })

  it('is none where only the desk can ask', () => {
    for (const field of ['events.sealant', 'light.reported', 'vehicle.placard.front', 'history.ourWorkOn'])
      expect(thingOfField(field)).toBeNull()
  })
})
