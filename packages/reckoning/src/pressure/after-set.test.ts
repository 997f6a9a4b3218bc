import { describe, expect, it } from 'vitest'
import { absoluteKilopascals, gaugeKilopascals } from '../units/measured.ts'
import { inKilopascals } from '../units/pressure-units.ts'
import { isAxleAlike, judgeAsLeft, sensorAgrees, usualAfterSetLimits } from './after-set.ts'
import { airAtSeaLevel } from './air-pressure.ts'

const psi = (value: number) => inKilopascals({ value, unit: 'psi' })

describe('a tire as it was left', () => {
  it.each([
    [34.94, 'under'],
    [34.96, 'on-target'],
    [35, 'on-target'],
    [36.5, 'on-target'],
    [36.54, 'on-target'],
    [36.56, 'over'],
    [40, 'over'],
    [20, 'under'],
  ])('at %d psi for a target of 35.0 is %s', (left, verdict) => {
    expect(judgeAsLeft(psi(35), psi(left))).toBe(verdict)
  })

  it('is over what the sidewall allows, however little that is over the target', () => {
    const within = (left: number, maximum: number) =>
      judgeAsLeft(psi(50), psi(left), usualAfterSetLimits, psi(maximum))
    expect(within(51, 51)).toBe('on-target')
    expect(within(51.1, 51)).toBe('over-sidewall')
    expect(within(52, 51)).toBe('over-sidewall')
    expect(within(49, 51)).toBe('under')
  })

  it('is judged by the limits of the shop', () => {
    expect(judgeAsLeft(psi(35), psi(36.5), { ...usualAfterSetLimits, overPsi: 1 })).toBe('over')
    expect(judgeAsLeft(psi(35), psi(36.5), { ...usualAfterSetLimits, overPsi: 2 })).toBe('on-target')
  })
})

it('a pressure half a digit off a limit is still within it', () => {
  const half = (value: number) => gaugeKilopascals(psi(value) + psi(0.05))
  expect(judgeAsLeft(psi(0), psi(-0.05))).toBe('on-target')
  expect(judgeAsLeft(psi(0), half(1.5))).toBe('on-target')
  expect(isAxleAlike(psi(0), half(1))).toBe(true)
  const sensor = { sensor: psi(0), refersTo: 'local-air', air: airAtSeaLevel } as const
  expect(sensorAgrees({ ...sensor, gauge: half(2) })).toBe(true)
})

describe('an axle', () => {
  it.each([
    [35, 36.04, true],
    [36.04, 35, true],
    [35, 36.06, false],
    [36.06, 35, false],
  ])('left at %d and %d psi is alike: %s', (left, right, alike) => {
    expect(isAxleAlike(psi(left), psi(right))).toBe(alike)
  })

  it('is judged by the limits of the shop', () => {
    expect(isAxleAlike(psi(35), psi(36), { ...usualAfterSetLimits, acrossAxlePsi: 0.5 })).toBe(false)
  })
})

describe('a sensor', () => {
  const of = { gauge: psi(35), refersTo: 'local-air', air: airAtSeaLevel } as const

  it.each([
    [32.94, false],
    [32.96, true],
    [37.04, true],
    [37.06, false],
  ])('that shows %d psi at a gauge of 35 agrees: %s', (sensor, agrees) => {
    expect(sensorAgrees({ ...of, sensor: psi(sensor) })).toBe(agrees)
  })

  it('that refers to the sea is expected to read low by what the altitude takes', () => {
    const high = { ...of, air: absoluteKilopascals(airAtSeaLevel - psi(3)), refersTo: 'sea-level' } as const
    expect(sensorAgrees({ ...high, sensor: psi(32) })).toBe(true)
    expect(sensorAgrees({ ...high, sensor: psi(30.1) })).toBe(true)
    expect(sensorAgrees({ ...high, sensor: psi(35) })).toBe(false)
    expect(sensorAgrees({ ...high, refersTo: 'local-air', sensor: psi(32) })).toBe(false)
  })

  it('is judged by the limits of the shop', () => {
    expect(sensorAgrees({ ...of, sensor: psi(33.5) }, { ...usualAfterSetLimits, sensorPsi: 1 })).toBe(false)
  })
})
