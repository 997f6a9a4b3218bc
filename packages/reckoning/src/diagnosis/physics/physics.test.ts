import { describe, expect, it } from 'vitest'
import { parseEvidence } from '../../evidence/evidence.ts'
import { diagnose } from '../diagnose.ts'
import type { Finding } from '../diagnosis.ts'
import { airOf, gaugeOf, seaLevelGaugeOf, warningPoint } from './air.test-support.ts'
import { judgeSet, vehicleSets } from './confusion.test-support.ts'
import { scoreOf } from './score.test-support.ts'
import { type Judged, judgeVehicles, tallyOf } from './tally.test-support.ts'

const meters = (feet: number): number => feet * 0.3048
const at = (fahrenheit: number, feet = 0) => ({ fahrenheit, meters: meters(feet) })

describe('the physics that the vehicles are made by', () => {
  // Worked numbers of the trade's own page, computed by hand from the ideal gas law and the standard atmosphere.
  it.each([
    { set: 35, from: at(68), to: at(-20), shows: 26.7 },
    { set: 35, from: at(68), to: at(110), shows: 39 },
    { set: 35, from: at(110), to: at(40), shows: 28.9 },
    { set: 33, from: at(68, 7_000), to: at(68, 500), shows: 29.9 },
    { set: 35, from: at(68, 500), to: at(68, 7_000), shows: 38.1 },
    { set: 33, from: at(64, 820), to: at(19, 820), shows: 28.9 },
  ])('shows $shows psi of a tire set to $set', ({ set, from, to, shows }) => {
    expect(gaugeOf(airOf(set, from), to)).toBeCloseTo(shows, 0.9)
  })

  it('has a sensor that refers to the sea read 2.6 psi low at 5,280 feet', () => {
    const place = at(60, 5_280)
    expect(35 - seaLevelGaugeOf(airOf(35, place), place)).toBeCloseTo(2.6, 1)
  })

  it('warns at 75 % of the label or at the floor, whichever is higher', () => {
    expect(warningPoint(35, 'SL')).toBe(26.25)
    expect(warningPoint(30, 'XL')).toBe(23)
  })
})

const judged = vehicleSets.map((set) => ({ name: set.name, stories: set.stories, all: judgeSet(set) }))
const every = judged.flatMap(({ all }) => all)

const rate = (all: readonly Judged[]): number => tallyOf(all).right / all.length

/** Where the diagnosis went wrong, for whoever reads a failed run. */
const errors = (all: readonly Judged[]): string[] =>
  all
    .filter(({ score }) => score.wrong.length > 0)
    .map(({ story, score }) => `${story}: ${score.wrong.join('; ')}`)

describe('vehicles of which the truth is known', () => {
  it.each(judged)('$name: the diagnosis names the truth and offers what it calls for', ({ all }) => {
    expect(rate(all), errors(all).slice(0, 20).join('\n')).toBeGreaterThanOrEqual(0.99)
  })

  it.each(judged)('$name: no stop that is due is missed', ({ all }) => {
    expect(all.filter(({ expected }) => expected.stops.length > 0).length).toBeGreaterThan(500)
    expect(all.flatMap(({ story, score }) => score.missedStops.map((stop) => `${story}: ${stop}`))).toEqual(
      [],
    )
  })

  it('leave evidence as a shop would send it', () => {
    for (const { evidence } of every.filter((_, index) => index % 100 === 0)) {
      expect(parseEvidence(evidence)).toEqual({ ok: true, evidence })
    }
  })

  it('are the same in every run', () => {
    for (const set of vehicleSets) {
      const again = judgeVehicles(set.stories, 50, set.seed)
      expect(again).toEqual(judgeVehicles(set.stories, 50, set.seed))
      expect(judgeVehicles(set.stories, 50, set.seed + 1)).not.toEqual(again)
    }
  })

  it('are judged as the diagnosis itself judges them', () => {
    for (const { evidence, expected, score } of every.filter((_, index) => index % 300 === 0)) {
      expect(scoreOf(expected, diagnose(evidence))).toEqual(score)
    }
  })
})

describe('the score of a vehicle', () => {
  const silent = { primary: null, findings: [] }

  it('is wrong where nothing is said of a vehicle of which something is to be said', () => {
    for (const { story, expected } of every) {
      const { wrong, missedStops } = scoreOf(expected, silent)
      expect(wrong.length > 0, story).toBe(
        expected.names.length + expected.stops.length + expected.primary.length > 0,
      )
      expect(missedStops).toHaveLength(expected.stops.length)
    }
  })

  it('is wrong where a sensor is offered for every wheel', () => {
    const sold = finding({ code: 'sensor-silent', wheels: ['LF', 'RF', 'RR', 'LR'], offers: ['sensor'] })
    for (const { expected } of every) {
      const { wrong } = scoreOf(expected, { primary: null, findings: [sold] })
      expect(wrong.some((words) => words.startsWith('sensor-silent offers sensor@'))).toBe(true)
    }
  })

  it('is wrong where a sound tire is stopped', () => {
    const stop = finding({ code: 'run-low-damage-possible', kind: 'stop', wheels: ['LF'] })
    const sound = every.filter(({ expected }) => expected.stops.length === 0)
    expect(sound.length).toBeGreaterThan(1_000)
    for (const { expected } of sound) {
      expect(scoreOf(expected, { primary: null, findings: [stop] }).wrong).toContain(
        'false stop run-low-damage-possible@LF',
      )
    }
  })
})

const finding = (parts: Partial<Finding> & Pick<Finding, 'code' | 'wheels'>): Finding => ({
  confidence: 'firm',
  kind: 'also',
  because: [],
  figures: {},
  offers: [],
  holds: [],
  ...parts,
})
