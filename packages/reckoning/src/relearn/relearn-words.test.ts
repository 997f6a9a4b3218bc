import { describe, expect, it } from 'vitest'
import type { SheetRelearn } from '../sheet.ts'
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

describe('a relearn in words', () => {
  it.each(['automatic', 'stationary', 'connector', 'reset'] as const)(
    'by the method %s holds all of the sheet’s own words in the order of the work',
    (method) => {
      const words = relearnWords({ ...sheet, method })
      const places = ['Enter.', 'It chirps.', 'Leave.', 'Mind: A trap.'].map((part) => words.indexOf(part))
      expect(places.every((place) => place >= 0)).toBe(true)
      expect(places).toEqual([...places].sort((one, other) => one - other))
    },
  )

  it('names the time limit where it counts, and the drive where the vehicle learns by driving', () => {
    expect(relearnWords(sheet)).toContain('within 5 minutes')
    expect(relearnWords({ ...sheet, method: 'automatic' })).toContain('drive 10 minutes at 30 mph')
    expect(relearnWords({ ...sheet, method: 'reset' })).not.toContain('15 feet')
  })

  it('leaves out what the sheet does not know', () => {
    const unknown = { ...sheet, timeLimitMinutes: null, driveMinutes: null, knownTrap: null }
    expect(relearnWords(unknown)).not.toMatch(/null|minutes|Mind/)
    expect(relearnWords({ ...unknown, method: 'automatic' })).not.toMatch(/null|drive/)
    expect(relearnWords({ ...sheet, method: 'automatic', driveSpeedMph: null })).toContain(
      '10 minutes, without',
    )
  })
})
