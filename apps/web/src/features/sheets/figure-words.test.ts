import { blankSheet, SheetFigure, type SpecificationSheet } from '@bayledger/reckoning/sheet'
import { printedFrom } from '@bayledger/reckoning/units/printed-pressure'
import { describe, expect, it } from 'vitest'
import { sheetFigureValue } from './figure-words.ts'

const tire = { size: '205/55R16 91V', loadClass: 'SL', sidewallMaximumPsi: 51 } as const
const blank: SpecificationSheet = { ...blankSheet('Dorrin Wicket hatch 2024'), sheetId: 'one', version: 1 }
const sheet: SpecificationSheet = {
  ...blank,
  system: 'direct',
  pressureDisplay: true,
  warnAtPsi: { front: 25, rear: null, spare: null },
  placard: { front: { psi: 33, kPa: 230 }, rear: { psi: 32, kPa: null }, spare: null },
  tire: { front: tire, rear: tire, spare: null },
  studs: {
    count: 5,
    thread: 'M12×1.5',
    fastener: 'nut',
    seat: 'cone',
    torque: { value: 107, unit: 'N·m' },
    handTurns: 7,
    makersSequence: [1, 3, 5, 2, 4],
    lockingFastener: false,
    retorqueMiles: { from: 50, to: 100 },
  },
  sensor: null,
  relearn: {
    method: 'automatic',
    entry: 'Park, then drive.',
    confirmation: 'The light goes out.',
    exit: 'By itself.',
    timeLimitMinutes: null,
    parkMinutes: 20,
    driveMinutes: 10,
    driveSpeedMph: 25,
    knownTrap: null,
  },
}

describe('a figure of a sheet in one line', () => {
  it('is empty where the shop does not have it', () => {
    for (const figure of SheetFigure.options) expect(sheetFigureValue(blank, figure)).toBe('')
  })

  it('says what a label prints that has no psi', () => {
    const bar = {
      ...sheet,
      placard: {
        front: printedFrom({ value: 2.3, unit: 'bar' }),
        rear: printedFrom({ value: 230, unit: 'kPa' }),
        spare: null,
      },
    } as const
    expect(sheetFigureValue({ ...bar, tire: 'missing' }, 'placard')).toBe(
      'front 33.4 psi (printed 2.3 bar), rear 33.4 psi (printed 230 kPa)',
    )
  })

  it.each([
    ['placard', 'front 33 psi (230 kPa) 205/55R16 91V SL, rear 32 psi 205/55R16 91V SL'],
    ['studTorque', '107 N·m, 5 nuts M12×1.5, the maker’s order 1-3-5-2-4'],
    ['frequency', ''],
    ['relearn', 'automatic, parked 20 min, driven 10 min, at 25 mph'],
    ['system', 'direct, shows pressures, warns at 25 psi front'],
  ] as const)('%s keeps the unit of its source', (figure, words) => {
    expect(sheetFigureValue(sheet, figure)).toBe(words)
  })
})
