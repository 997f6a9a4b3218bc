import { describe, expect, it } from 'vitest'
import type { SheetRelearn } from '../sheet.ts'
import { methodNotes, relearnTemplate } from './relearn-template.ts'
import { relearnWords } from './relearn-words.ts'

const sheet: SheetRelearn = {
  method: 'stationary',
  entry: 'Enter.',
  confirmation: 'It chirps.',
  exit: 'Leave.',
  timeLimitMinutes: 5,
  parkMinutes: 20,
  driveMinutes: 10,
  driveSpeedMph: 30,
  knownTrap: 'A trap.',
}
const methods = ['automatic', 'stationary', 'connector', 'reset'] as const
const fourWheels = { spare: 'temporary', spareMonitored: false } as const
const fiveWheels = { spare: 'full-size', spareMonitored: true } as const
const procedure = { entry: 'Enter.', confirmation: 'It chirps.', exit: 'Leave.', knownTrap: 'A trap.' }
const fourInOrder = ['LF', 'RF', 'RR', 'LR']

describe('the template of a relearn', () => {
  it('has only the figures that belong to its method', () => {
    const filled = (method: (typeof methods)[number]) => relearnTemplate({ ...sheet, method }, fourWheels)
    expect(filled('automatic')).toEqual({
      ...procedure,
      method: 'automatic',
      parkMinutes: 20,
      driveMinutes: 10,
      driveSpeedMph: 30,
    })
    expect(filled('stationary')).toEqual({
      ...procedure,
      method: 'stationary',
      timeLimitMinutes: 5,
      order: fourInOrder,
    })
    expect(filled('connector')).toEqual({
      ...procedure,
      method: 'connector',
      driveMinutes: 10,
      order: fourInOrder,
    })
    expect(filled('reset')).toEqual({ ...procedure, method: 'reset', driveMinutes: 10 })
  })

  it('takes the spare last, and only where there is one that the vehicle listens to', () => {
    const order = (vehicle: Parameters<typeof relearnTemplate>[1]) => {
      const template = relearnTemplate(sheet, vehicle)
      return template.method === 'stationary' ? template.order : []
    }
    expect(order(fiveWheels)).toEqual([...fourInOrder, 'SP'])
    expect(order({ spare: 'full-size', spareMonitored: false })).toEqual(fourInOrder)
    expect(order({ spare: 'none', spareMonitored: true })).toEqual(fourInOrder)
  })

  it('says of each method what the light does, by what it fails and what proves it', () => {
    const said = methods.flatMap((method) => Object.values(methodNotes(method)))
    expect(said).toHaveLength(12)
    expect(new Set(said).size).toBe(12)
  })
})

describe('a relearn in words', () => {
  it.each(methods)(
    'by the method %s holds all of the sheet’s own words in the order of the work',
    (method) => {
      const words = relearnWords({ ...sheet, method }, fourWheels)
      const places = [
        'Enter.',
        'It chirps.',
        'Leave.',
        methodNotes(method).lightMeanwhile,
        'Mind: A trap.',
      ].map((part) => words.indexOf(part))
      expect(places.every((place) => place >= 0)).toBe(true)
      expect(places).toEqual([...places].sort((one, other) => one - other))
    },
  )

  it('names the sheet’s figures where they count', () => {
    expect(relearnWords(sheet, fourWheels)).toContain('All wheels within 5 minutes, or begin again.')
    expect(relearnWords(sheet, fiveWheels)).toContain('Trigger LF, RF, RR, LR, SP, each once')
    const automatic = relearnWords({ ...sheet, method: 'automatic' }, fourWheels)
    expect(automatic).toContain('At least 20 minutes parked.')
    expect(automatic).toContain('Then drive 10 minutes at 30 mph or more where the road allows it,')
    const connector = relearnWords({ ...sheet, method: 'connector' }, fourWheels)
    expect(connector).toContain('Read LF, RF, RR, LR first.')
    expect(connector).toContain('for the first 10 minutes of driving')
    const reset = relearnWords({ ...sheet, method: 'reset' }, fourWheels)
    expect(reset).toContain('up to 10 minutes of driving')
    expect(reset).not.toContain('15 feet')
  })

  it('says what the sheet does not know, and guesses nothing', () => {
    const unknown = {
      ...sheet,
      timeLimitMinutes: null,
      parkMinutes: null,
      driveMinutes: null,
      driveSpeedMph: null,
      knownTrap: null,
    }
    for (const method of methods)
      expect(relearnWords({ ...unknown, method }, fourWheels)).not.toMatch(/null|\d+ minutes|mph|Mind/)
    expect(relearnWords(unknown, fourWheels)).toContain('The sheet names no time limit')
    const automatic = relearnWords({ ...unknown, method: 'automatic' }, fourWheels)
    expect(automatic).toContain('does not say how long to park')
    expect(automatic).toContain('does not say how long to drive')
    expect(relearnWords({ ...sheet, method: 'automatic', driveSpeedMph: null }, fourWheels)).toContain(
      'Then drive 10 minutes, without long stops.',
    )
  })
})
