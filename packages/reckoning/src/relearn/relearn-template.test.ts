import { describe, expect, it } from 'vitest'
import type { SheetRelearn } from '../sheet.ts'
import { relearnOrder, relearnTemplate } from './relearn-template.ts'

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
type Method = SheetRelearn['method']
const procedure = { entry: 'Enter.', confirmation: 'It chirps.', exit: 'Leave.', knownTrap: 'A trap.' }
const fourInOrder = ['LF', 'RF', 'RR', 'LR'] as const

describe('the template of a relearn', () => {
  it('has only the figures that belong to its method', () => {
    const filled = (method: Method) => relearnTemplate({ ...sheet, method }, fourInOrder)
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
    expect(relearnOrder({ spare: 'full-size', spareMonitored: true })).toEqual([...fourInOrder, 'SP'])
    expect(relearnOrder({ spare: 'full-size', spareMonitored: false })).toEqual(fourInOrder)
    expect(relearnOrder({ spare: 'none', spareMonitored: true })).toEqual(fourInOrder)
  })
})
