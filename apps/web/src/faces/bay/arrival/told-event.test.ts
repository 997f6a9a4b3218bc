import { describe, expect, it } from 'vitest'
import { eventOf, withEvent } from './told-event.ts'

describe('what the customer says in the bay', () => {
  it('is a no, a yes, or a yes with its wheel and days', () => {
    expect(eventOf('sealant', { happened: 'no', wheel: 'RR' })).toEqual({ kind: 'sealant', happened: false })
    expect(eventOf('sealant', { happened: 'yes' })).toEqual({ kind: 'sealant', happened: true })
    expect(eventOf('collision', { happened: 'yes', wheel: 'LF', daysAgo: '3' })).toEqual({
      kind: 'collision',
      happened: true,
      wheel: 'LF',
      daysAgo: 3,
    })
  })

  it('replaces what was said before about the same task, and leaves the rest', () => {
    const told = [
      { kind: 'rotation', happened: false } as const,
      { kind: 'sealant', happened: true } as const,
    ]
    const now = { kind: 'sealant', happened: true, wheel: 'RR' } as const
    expect(withEvent(told, now)).toEqual([{ kind: 'rotation', happened: false }, now])
  })

  it('keeps what was said about another wheel', () => {
    const before = { kind: 'driven-low', happened: true, wheel: 'LF' } as const
    const now = { kind: 'driven-low', happened: true, wheel: 'RR' } as const
    expect(withEvent([before], now)).toEqual([before, now])
    expect(withEvent([before], { kind: 'driven-low', happened: false })).toEqual([
      { kind: 'driven-low', happened: false },
    ])
  })
})
