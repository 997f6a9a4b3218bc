/**
 * What a technician takes for granted about torque: our convention, after common practice without a source. The vehicle
 * maker's figure governs for a wheel, the sensor maker's for a stem, and neither is to be had from here.
 */
import { cyclesLeft, workingDaysLeft } from '@bayledger/reckoning/torque/calibration'
import { stemTorqueDoubts, torqueDoubts } from '@bayledger/reckoning/torque/plausible-torque'
import { roundTorque } from '@bayledger/reckoning/torque/rounds'
import { expect, it } from 'vitest'
import { ownConvention, published } from './published.ts'
import { isUsual } from './stud-torque.ts'

published({ document: 'What the trade takes for granted about torque', certainty: ownConvention }, () => {
  it.each([
    ['M12×1.5', 76],
    ['M12×1.5', 100],
    ['M14×1.5', 140],
    ['M14×1.5', 150],
    ['1/2-20', 100],
  ])('%s at %i lbf·ft is plausible', (thread, poundFeet) => {
    expect(isUsual(thread, poundFeet)).toBe(true)
  })

  it.each([
    ['M12×1.5', 30],
    ['M12×1.5', 150],
    ['M14×1.5', 40],
    ['M14×1.5', 250],
  ])('%s at %i lbf·ft is not', (thread, poundFeet) => {
    expect(isUsual(thread, poundFeet)).toBe(false)
  })

  it('100 on a 12 mm stud may be lbf·ft or N·m: only the source says', () => {
    expect(torqueDoubts('M12×1.5', { value: 100, unit: 'N·m' })).toEqual([
      { code: 'usual-in-other-units', units: ['lbf·ft'] },
    ])
  })

  it.each([35, 62, 106])('a stem nut at %i lbf·in is plausible', (value) => {
    expect(stemTorqueDoubts('stem-nut', { value, unit: 'lbf·in' })).toEqual([])
  })

  it.each([4, 7, 12])('a stem nut at %i N·m is plausible', (value) => {
    expect(stemTorqueDoubts('stem-nut', { value, unit: 'N·m' })).toEqual([])
  })

  it('a stem nut at 62 lbf·ft was meant in lbf·in', () => {
    expect(stemTorqueDoubts('stem-nut', { value: 62, unit: 'lbf·ft' })).toMatchObject([{ meant: ['lbf·in'] }])
  })

  it.each([80, 83, 100, 136])('a first round of %i lbf·ft is at 50 to 60 %% of it', (figure) => {
    const half = roundTorque('half', { value: figure, unit: 'lbf·ft' }).value / figure
    expect(half).toBeGreaterThanOrEqual(0.5)
    expect(half).toBeLessThanOrEqual(0.6)
  })

  it.each([
    [200, 25],
    [300, 17],
  ])('a wrench that clicks %i times a day has spent 5,000 on working day %i', (perDay, days) => {
    expect(workingDaysLeft(0, perDay)).toBe(days)
  })

  it('a wrench with 4,610 clicks has 390 left', () => {
    expect(cyclesLeft(4_610)).toBe(390)
  })
})
