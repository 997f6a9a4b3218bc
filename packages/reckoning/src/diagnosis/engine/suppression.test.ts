import { describe, expect, it } from 'vitest'
import type { WheelPosition } from '../../wheels.ts'
import { FindingCode } from '../finding-codes.ts'
import type { Match } from '../rule.ts'
import { suppress } from './suppression.ts'

/** `by > removed`, in the order of the trade (common practice, no source). */
const everywhere = `
  light-not-witnessed > no-warning-given
  retry-silent-wheel > no-warning-given
  cross-read-suspected > no-warning-given
  system-unknown > no-warning-given
  system-kind-contradicted > set-then-reset reset-only reset-and-recheck no-warning-given
  altitude-change > cold-weather weather-and-seepage
  no-wheel-answers > sensor-silent
  sensors-refer-to-sea-level > sensor-reads-wrong
  gauge-suspect > sensor-reads-wrong
  control-module-blank > other-wheel-set id-not-stored stored-id-unheard
  other-wheel-set > id-not-stored stored-id-unheard
  spare-rotated-without-relearn > rotated-without-relearn`

const onItsWheels = `
  hot-corner > slow-loss-suspected slow-leak warm-tire-hides-low over-inflated under-placard
  altitude-change > tire-low
  cold-weather > tire-low
  weather-and-seepage > tire-low
  sensor-does-not-follow > no-warning-given
  sensor-reads-wrong > no-warning-given
  tire-low > warm-tire-hides-low slow-loss-suspected under-placard
  cold-weather > slow-loss-suspected under-placard
  weather-and-seepage > slow-loss-suspected under-placard
  axle-pressures-exchanged > slow-loss-suspected under-placard
  altitude-change > slow-loss-suspected under-placard
  slow-loss-suspected > under-placard
  warm-tire-hides-low > under-placard
  run-low-damage-possible > under-placard
  no-sensor-on-arrival > sensor-silent
  temporary-spare-fitted > over-inflated under-placard sensor-silent no-sensor-on-arrival
  sensor-does-not-follow > sensor-reads-wrong
  sensor-asleep > sensor-reads-wrong protocol-wrong id-not-stored
  cross-read-suspected > id-not-stored stored-id-unheard rotated-without-relearn id-duplicated
  id-duplicated > id-not-stored rotated-without-relearn
  frequency-wrong > id-not-stored
  wheel-from-another-vehicle > id-not-stored`

/** Everywhere, as soon as the two share a wheel. */
const ifShared = `
  run-low-damage-possible > cold-weather weather-and-seepage altitude-change`

const pairsIn = (text: string): [FindingCode, FindingCode][] =>
  text
    .trim()
    .split('\n')
    .flatMap((line) => {
      const [by = '', removed = ''] = line.split(' > ')
      return removed
        .split(' ')
        .map((code): [FindingCode, FindingCode] => [FindingCode.parse(by.trim()), FindingCode.parse(code)])
    })

type Wheels = readonly WheelPosition[]

/** The wheels of the matches that are left after suppression. */
const after = (matches: Partial<Record<FindingCode, Wheels>>): Partial<Record<FindingCode, Wheels>> => {
  const standing = new Map(
    Object.entries(matches).map(([code, wheels]) => [
      FindingCode.parse(code),
      { wheels, because: [], figures: {} } as unknown as Match,
    ]),
  )
  suppress(standing)
  return Object.fromEntries([...standing].map(([code, { wheels }]) => [code, wheels]))
}

describe('a finding that makes another idle', () => {
  it.each(pairsIn(everywhere))('%s takes %s away, on whatever wheels', (by, removed) => {
    expect(after({ [by]: ['LF'], [removed]: ['LF', 'RR'] })).toEqual({ [by]: ['LF'] })
    expect(after({ [by]: [], [removed]: ['LR'] })).toEqual({ [by]: [] })
  })

  it.each(pairsIn(onItsWheels))('%s takes %s away on its own wheels only', (by, removed) => {
    expect(after({ [by]: ['LF', 'LR'], [removed]: ['LF', 'RR'] })).toEqual({
      [by]: ['LF', 'LR'],
      [removed]: ['RR'],
    })
    expect(after({ [by]: ['LF', 'RR'], [removed]: ['LF', 'RR'] })).toEqual({ [by]: ['LF', 'RR'] })
    expect(after({ [by]: ['LF'], [removed]: ['LR'] })).toEqual({ [by]: ['LF'], [removed]: ['LR'] })
  })

  it.each(pairsIn(ifShared))('%s takes %s away everywhere once they share a wheel', (by, removed) => {
    expect(after({ [by]: ['LF'], [removed]: ['LF', 'RR'] })).toEqual({ [by]: ['LF'] })
    expect(after({ [by]: ['SP'], [removed]: ['LF', 'RR'] })).toEqual({
      [by]: ['SP'],
      [removed]: ['LF', 'RR'],
    })
  })

  it('is one of these: any other two are both kept', () => {
    const idle = new Set(
      [...pairsIn(everywhere), ...pairsIn(onItsWheels), ...pairsIn(ifShared)].map(
        ([by, removed]) => `${by}>${removed}`,
      ),
    )
    for (const by of FindingCode.options)
      for (const other of FindingCode.options) {
        if (by === other) continue
        const stands = Object.keys(after({ [by]: ['LF'], [other]: ['LF'] })).sort()
        const expected = [
          ...(idle.has(`${other}>${by}`) ? [] : [by]),
          ...(idle.has(`${by}>${other}`) ? [] : [other]),
        ].sort()
        expect(stands, `${by} beside ${other}`).toEqual(expected)
      }
  })

  it('removes nothing any more once it was removed itself', () => {
    const standing = after({ 'altitude-change': ['LF'], 'cold-weather': ['RR'], 'tire-low': ['RR'] })
    expect(standing).toEqual({ 'altitude-change': ['LF'], 'tire-low': ['RR'] })
    expect(after({ 'control-module-blank': [], 'other-wheel-set': ['LF'], 'id-not-stored': ['LF'] })).toEqual(
      {
        'control-module-blank': [],
      },
    )
  })
})
