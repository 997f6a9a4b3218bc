import { FindingCode } from '@bayledger/reckoning/diagnosis/finding-codes'
import { describe, expect, it } from 'vitest'
import { inOrderOfReading, severityOf } from './severity.ts'

describe('how much a finding weighs', () => {
  it('is its stop, where it stops the vehicle', () => {
    expect(severityOf({ code: 'stem-leaking', kind: 'stop', stop: 'repair-before-release' }, null)).toBe(
      'repair-before-release',
    )
    expect(severityOf({ code: 'tire-unsafe', kind: 'stop' }, null)).toBe('do-not-drive')
  })

  it('is the cause for the primary finding alone', () => {
    expect(severityOf({ code: 'tire-low', kind: 'cause' }, 'tire-low')).toBe('cause')
    expect(severityOf({ code: 'sensor-silent', kind: 'cause' }, 'tire-low')).toBe('also-found')
    expect(severityOf({ code: 'tire-old', kind: 'note' }, 'tire-low')).toBe('for-information')
  })

  it.each(['warning-unexplained', 'malfunction-unexplained', 'system-kind-contradicted'] as const)(
    'is "not explained yet" for %s, also where it is the primary one',
    (code) => {
      expect(severityOf({ code, kind: 'ask' }, null)).toBe('unexplained')
      expect(severityOf({ code, kind: 'ask' }, code)).toBe('unexplained')
    },
  )

  it('is "not checked" where a fact is needed first, and never the cause', () => {
    expect(severityOf({ code: 'gauge-missing', kind: 'ask' }, 'gauge-missing')).toBe('not-checked')
  })
})

describe('the order of reading', () => {
  it('puts stops first, then what explains the light, even where more must be checked', () => {
    const note = { code: 'tire-old', kind: 'note' } as const
    const also = { code: 'interference-suspected', kind: 'also' } as const
    const explains = { code: 'malfunction-unexplained', kind: 'ask' } as const
    const stop = { code: 'tire-unsafe', kind: 'stop' } as const
    const read = inOrderOfReading([note, also, explains, stop], explains.code)
    expect(read.map(({ code }) => code)).toEqual([stop, explains, also, note].map(({ code }) => code))
    for (const { code } of read) expect(FindingCode.options).toContain(code)
  })
})
