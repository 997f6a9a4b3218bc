import { describe, expect, it } from 'vitest'
import type { Evidence } from '../evidence/evidence-schema.ts'
import { caseNamed } from './cases/worked-cases.test-support.ts'
import { suppose } from './checks/suppose.ts'
import { contradictionsOf } from './contradictions.ts'
import { judge } from './engine/judge.ts'

const voiced = (evidence: Evidence): string[] => contradictionsOf(judge(evidence)).map(({ code }) => code)

const changed = (name: string, values: Record<string, unknown> = {}): Evidence =>
  suppose(caseNamed(name).evidence, values)

const ofAllFour = (name: string, value: unknown): Record<string, unknown> =>
  Object.fromEntries(['LF', 'RF', 'RR', 'LR'].map((wheel) => [`wheels.${wheel}.${name}`, value]))

describe('what contradicts what', () => {
  it('is silent where nothing does', () => {
    expect(voiced(changed('K01'))).toEqual([])
    expect(voiced(changed('K49'))).toEqual([])
  })

  it('a flash against sensors that all match', () => {
    expect(voiced(changed('K24'))).toEqual(['light-against-evidence'])
  })

  it('no light against a low tire', () => {
    expect(voiced(changed('K01', { 'light.behavior': 'off' }))).toEqual(['light-off-tire-low'])
  })

  it('a solid light against right tires, and a gauge against all sensors', () => {
    expect(voiced(changed('K08'))).toEqual(['light-on-tires-right', 'gauge-against-sensors'])
  })

  it('no light against a low tire, even while something is still to be checked, for any system, and for a low spare', () => {
    const off = { 'light.behavior': 'off' }
    expect(voiced(changed('K01', { ...off, 'light.lampCheck': null }))).toEqual(['light-off-tire-low'])
    expect(voiced(changed('K22', off))).toEqual(['light-off-tire-low'])
    expect(voiced(changed('K27', off))).toEqual(['light-off-tire-low'])
    expect(voiced(changed('K27', { ...off, 'vehicle.spareMonitored': false }))).toEqual([])
  })

  it('a solid light against right tires, even while something is still to be checked', () => {
    const solid = { 'light.behavior': 'solid', 'light.lampCheck': null }
    expect(voiced(changed('K24', solid))).toEqual(['light-on-tires-right'])
    expect(voiced(changed('K24', { ...solid, 'wheels.LF.gauge': null }))).toEqual([])
  })

  it('a flash against sensors that the vehicle holds, though at other places', () => {
    const flash = { 'light.behavior': 'flash-then-solid' }
    expect(voiced(changed('K10', flash))).toEqual(['light-against-evidence'])
    expect(voiced(changed('K10', { ...flash, 'wheels.LF.frequencyMHz': null }))).toEqual([])
  })

  it('a sensor that the vehicle cannot hear against a light that does not flash', () => {
    expect(voiced(changed('K02', { 'light.behavior': 'off' }))).toEqual(['fault-not-flashed'])
    expect(voiced(changed('K15', { 'light.behavior': 'solid' }))).toContain('fault-not-flashed')
    expect(voiced(changed('K02'))).toEqual([])
    const fitted = (minutes: number) => ({
      'light.behavior': 'off',
      'events.sensor-fitted-today': { wheel: 'RF' },
      'surroundings.minutesDriven': minutes,
    })
    expect(voiced(changed('K15', fitted(19)))).toEqual([])
    expect(voiced(changed('K15', fitted(20)))).toEqual(['fault-not-flashed'])
  })

  it('a lamp that was dark at key-on against a light that comes on; a dark lamp alone explains its silence', () => {
    expect(voiced(changed('K31', { 'light.behavior': 'solid' }))).toContain('lamp-dark-yet-lit')
    expect(voiced(changed('K31'))).toEqual([])
  })

  it('a low tire in a vehicle that was rotated without a relearn, or that names another one', () => {
    expect(voiced(changed('K10', { 'light.behavior': 'solid', 'wheels.LF.gauge': 24 }))).toContain(
      'positions-exchanged',
    )
    const codes = (wheel: string) => ({ 'controlModule.codes': [{ class: 'low-pressure', wheel }] })
    expect(voiced(changed('K01', codes('RR')))).toEqual(['positions-exchanged'])
    expect(voiced(changed('K01', codes('LF')))).toEqual([])
  })

  it('more sensors than wheels', () => {
    expect(voiced(changed('K01', { strayIds: ['5E5E0001'] }))).toEqual(['stray-sensors-heard'])
  })

  it('a customer who saw another light than we did', () => {
    expect(voiced(changed('K01', { 'light.reported': 'flash-then-solid' }))).toEqual([
      'light-reported-otherwise',
    ])
    expect(voiced(changed('K01', { 'light.reported': 'solid' }))).toEqual([])
  })

  it('a sheet against all four sensors that the vehicle knows: no sensor is called wrong', () => {
    const evidence = changed('K24', ofAllFour('frequencyMHz', 315))
    expect(voiced(evidence)).toEqual(['sheet-frequency-doubtful'])
    expect(judge(evidence).judged).toEqual([])
    expect(judge(evidence).primary).toBeNull()
  })

  it('a sensor replaced last week and made nine years ago', () => {
    const replaced = { 'events.sensor-replaced-elsewhere': { wheel: 'RF', daysAgo: 7 } }
    expect(voiced(changed('K01', { ...replaced, 'wheels.RF.sensorAgeMonths': 110 }))).toEqual([
      'sensor-older-than-reported',
    ])
    expect(voiced(changed('K01', replaced))).toEqual([])
  })
})
