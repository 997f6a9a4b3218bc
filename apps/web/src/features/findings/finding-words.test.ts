import { inOrderOfReading } from '@bayledger/ledger/questions/severity'
import type { Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import { describe, expect, it } from 'vitest'
import { headlineOf, proofOf, reasonTitle, shapeOf, valueWords, wordOf } from './finding-words.ts'

const finding = (change: Partial<Finding>): Finding => ({
  code: 'tire-low',
  wheels: [],
  confidence: 'firm',
  kind: 'cause',
  because: [],
  figures: {},
  offers: [],
  holds: [],
  ...change,
})

/** What the value shows does not matter here. */
const shown = { code: 'fitted', values: {} } as const

describe('the order of reading', () => {
  it('is stops, the cause, also found, ask first, for information, whatever order they came in', () => {
    const note = finding({ code: 'tire-old', kind: 'note' })
    const ask = finding({ code: 'gauge-missing', kind: 'ask' })
    const also = finding({ code: 'stem-corroded', kind: 'also' })
    const second = finding({ code: 'sensor-silent', kind: 'cause' })
    const cause = finding({})
    const stop = finding({ code: 'tire-unsafe', kind: 'stop', stop: 'do-not-drive' })
    expect(inOrderOfReading([note, ask, also, second, cause, stop], 'tire-low')).toEqual([
      stop,
      cause,
      also,
      second,
      ask,
      note,
    ])
  })

  it('puts what explains the light before what else was found, also where it must be asked first', () => {
    const also = finding({ code: 'interference-suspected', kind: 'also' })
    const explains = finding({ code: 'malfunction-unexplained', kind: 'ask' })
    expect(inOrderOfReading([also, explains], 'malfunction-unexplained')).toEqual([explains, also])
    expect(inOrderOfReading([explains, also], null)).toEqual([also, explains])
  })

  it('calls one finding the cause, and no other', () => {
    const other = finding({ code: 'sensor-silent' })
    expect([wordOf(finding({}), 'tire-low'), shapeOf(finding({}), 'tire-low')]).toEqual(['Cause', 'cause'])
    expect([wordOf(other, 'tire-low'), shapeOf(other, 'tire-low')]).toEqual(['Also found', 'also-found'])
    expect(wordOf(finding({ kind: 'stop', stop: 'do-not-open-the-tire' }), null)).toBe('Do not open the tire')
  })

  it('never calls the cause what must be asked first', () => {
    const ask = finding({ code: 'retry-silent-wheel', kind: 'ask' })
    expect([wordOf(ask, 'retry-silent-wheel'), shapeOf(ask, 'retry-silent-wheel')]).toEqual([
      'Not checked',
      'not-checked',
    ])
  })
})

describe('the words of a finding', () => {
  it('name its wheels in reading order, four of them as all four, the spare beside them', () => {
    expect(headlineOf(finding({ wheels: ['LR', 'LF'] }))).toBe('Tire low: left front, left rear')
    expect(headlineOf(finding({ wheels: ['LF', 'RF', 'RR', 'LR'] }))).toBe('Tire low: all four')
    expect(headlineOf(finding({ wheels: ['LF', 'RF', 'RR', 'LR', 'SP'] }))).toBe('Tire low: all four, spare')
    expect(headlineOf(finding({}))).toBe('Tire low')
    expect(headlineOf(finding({ code: 'cold-weather', wheels: ['LF', 'RF', 'RR', 'LR'] }))).toBe(
      'All four low from colder weather',
    )
  })

  it('prove it by the first measured figure with its unit, never by a count or a yes', () => {
    const gauge = { field: 'wheels.LF.gauge', value: 22, unit: 'psi', ...shown }
    const seen = { field: 'wheels.LF.sealantSeen', value: true, unit: null, ...shown }
    const tries = { field: 'wheels.LF.tries', value: 3, unit: null, ...shown }
    expect(proofOf(finding({ because: [seen, tries, gauge] }))).toEqual(gauge)
    expect(proofOf(finding({ because: [seen, tries] }))).toBeNull()
    expect([gauge, seen, tries].map(valueWords)).toEqual(['22.0 psi', 'yes', '3'])
  })

  it('say a temperature with its degrees, an ID in capitals, and what was not read', () => {
    const words = (field: string, value: string | number | null, unit: string | null) =>
      valueWords({ field, value, unit, ...shown })
    expect(words('surroundings.outdoor', -5, 'F')).toBe('−5 °F')
    expect(words('wheels.LF.id', '1a2b', null)).toBe('1A2B')
    expect(words('light.behavior', 'flash-then-solid', null)).toBe('flashes, then solid')
    expect(words('wheels.LF.gauge', null, null)).toBe('not read')
  })

  it('title a reason by what was seen, not by the question that it answered', () => {
    const title = (field: string) => reasonTitle({ field, value: null, unit: null, ...shown })
    expect(title('wheels.RR.answer')).toBe('Right rear sensor')
    expect(title('wheels.RR.gauge')).toBe('Right rear gauge pressure')
    expect(title('controlModule.ids.LF')).toBe('Left front sensor ID stored in the vehicle')
    expect(title('events.sealant')).toBe('As told: sealant')
  })
})

it.each(['warning-unexplained', 'malfunction-unexplained', 'system-kind-contradicted'] as const)(
  '%s has the word that the report prints for it, as the primary finding too',
  (code) => {
    expect(wordOf(finding({ code, kind: 'ask' }), code)).toBe('Not explained yet')
  },
)
