import { relearnTemplate } from '@bayledger/reckoning/relearn/relearn-template'
import type { SheetRelearn } from '@bayledger/reckoning/sheet'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { describe, expect, it } from 'vitest'
import { relearn } from './en/relearn.ts'
import { relearnWords } from './relearn.ts'

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
const four: readonly WheelPosition[] = ['LF', 'RF', 'RR', 'LR']
const five: readonly WheelPosition[] = [...four, 'SP']
const inWords = (procedure: SheetRelearn, order: readonly WheelPosition[]): string =>
  relearnWords(relearn, relearnTemplate(procedure, order))

/** What the light does meanwhile, by method. */
const lights = {
  automatic: 'The light stays as it was until the vehicle has learned.',
  stationary: 'Many vehicles flash the light or show a message the whole time.',
  connector: 'The light may stay on until the first messages come',
  reset: 'The light goes out, and the vehicle goes on learning',
} as const

describe('a relearn in words', () => {
  it.each(methods)(
    'by the method %s holds all of the sheet’s own words in the order of the work',
    (method) => {
      const words = inWords({ ...sheet, method }, four)
      const places = ['Enter.', 'It chirps.', 'Leave.', lights[method], 'Mind: A trap.'].map((part) =>
        words.indexOf(part),
      )
      expect(places.every((place) => place >= 0)).toBe(true)
      expect(places).toEqual([...places].sort((one, other) => one - other))
    },
  )

  it('names the sheet’s figures where they count', () => {
    expect(inWords(sheet, four)).toContain('All wheels within 5 minutes, or begin again.')
    expect(inWords(sheet, five)).toContain('Trigger LF, RF, RR, LR, SP, each once')
    const automatic = inWords({ ...sheet, method: 'automatic' }, four)
    expect(automatic).toContain('At least 20 minutes parked.')
    expect(automatic).toContain('Then drive 10 minutes at 30 mph or more where the road allows it,')
    const connector = inWords({ ...sheet, method: 'connector' }, four)
    expect(connector).toContain('Read LF, RF, RR, LR first.')
    expect(connector).toContain('for the first 10 minutes of driving')
    const reset = inWords({ ...sheet, method: 'reset' }, four)
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
      expect(inWords({ ...unknown, method }, four)).not.toMatch(/null|\d+ minutes|mph|Mind/)
    expect(inWords(unknown, four)).toContain('The sheet names no time limit')
    const automatic = inWords({ ...unknown, method: 'automatic' }, four)
    expect(automatic).toContain('does not say how long to park')
    expect(automatic).toContain('does not say how long to drive')
    expect(inWords({ ...sheet, method: 'automatic', driveSpeedMph: null }, four)).toContain(
      'Then drive 10 minutes, without long stops.',
    )
  })
})
