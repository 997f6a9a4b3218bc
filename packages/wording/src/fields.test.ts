import { describe, expect, it } from 'vitest'
import { fields } from './en/fields.ts'
import { wheels } from './en/wheels.ts'
import { fieldTitle, fieldWords, seenWords, uncheckedLines } from './fields.ts'

const words = { fields, wheels }

describe('a field of the evidence', () => {
  it.each([
    ['wheels.LF.gauge', 'left front gauge pressure'],
    ['wheels.SP.sensorAgeMonths', 'spare age of the sensor'],
    ['wheels.RR', 'right rear wheel'],
    ['wheels.LR.someNewThing', 'left rear some new thing'],
    ['controlModule', 'what the vehicle has stored'],
    ['controlModule.ids.RF', 'right front sensor ID stored in the vehicle'],
    ['events.air-added', 'as told: air added'],
    ['events.driven-low.twice', 'as told: driven low twice'],
    ['surroundings.altitude', 'altitude'],
    ['light.lampCheck', 'whether the warning light lights at key-on'],
    ['wheels.none.gauge', 'wheels, none, gauge'],
    ['wheel.front.gauge', 'wheel, front, gauge'],
    ['some-thing.newField', 'some thing, new field'],
  ])('%s reads "%s"', (field, reads) => {
    expect(fieldWords(words, field)).toBe(reads)
  })

  it('begins a line with a capital', () => {
    expect(fieldTitle(words, 'surroundings.minutesDriven')).toBe('Minutes driven before')
    expect(fieldTitle(words, 'wheels.LF.stem')).toBe('Left front condition of the stem')
  })
})

describe('where a fact was seen', () => {
  it.each([
    ['wheels.RR.answer', 'right rear sensor'],
    ['wheels.LF.followsPressure', 'left front sensor follows a change of pressure'],
    ['wheels.SP.mounted', 'spare wheel mounted'],
    ['wheels.RR.gauge', 'right rear gauge pressure'],
    ['wheels.RR', 'right rear wheel'],
    ['light.behavior', 'what the warning light does, seen by us'],
  ])('%s reads "%s", never as a question', (field, reads) => {
    expect(seenWords(words, field)).toBe(reads)
  })
})

describe('what nobody looked at', () => {
  it('takes few lines: what was not checked on which wheels, then the rest, then what was not asked', () => {
    expect(
      uncheckedLines(words, [
        'events.rotation',
        'wheels.LF.gauge',
        'controlModule.ids',
        'wheels.RR.gauge',
        'wheels.LF.stem',
        'light.behavior',
        'events.sensor-fitted-today',
        'wheels.SP',
      ]),
    ).toEqual([
      'Gauge pressure: LF, RR',
      'Condition of the stem: LF',
      'Sensor IDs stored in the vehicle; what the warning light does, seen by us; spare wheel',
      'Not asked of the customer: rotation, sensor fitted today',
    ])
  })

  it('has no line for what there is none of', () => {
    expect(uncheckedLines(words, [])).toEqual([])
    expect(uncheckedLines(words, ['wheels.LF.gauge'])).toEqual(['Gauge pressure: LF'])
    expect(uncheckedLines(words, ['surroundings.outdoor'])).toEqual(['Outdoor temperature'])
    expect(uncheckedLines(words, ['events.collision'])).toEqual(['Not asked of the customer: collision'])
  })
})
