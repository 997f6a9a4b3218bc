import { describe, expect, it } from 'vitest'
import { agoWords, askedEvents, type EventAnswer, eventsAsEvidence } from './events.ts'

const yes: EventAnswer = { happened: 'yes', wheel: null, daysAgo: null }

describe('events at the write-up', () => {
  it('that nobody asked for are absent, never "did not happen"', () => {
    expect(eventsAsEvidence({ rotation: yes }, false)).toEqual([{ kind: 'rotation', happened: true }])
  })

  it('that were all asked for by name are each a yes or a no', () => {
    const events = eventsAsEvidence({ 'driven-low': { ...yes, wheel: 'RR', daysAgo: 7 } }, true)
    expect(events).toHaveLength(askedEvents.length)
    expect(events.filter(({ happened }) => happened)).toEqual([
      { kind: 'driven-low', happened: true, wheel: 'RR', daysAgo: 7 },
    ])
  })

  it('that the customer does not know of are absent, also where all others did not happen', () => {
    const open = { 'battery-disconnected': { ...yes, happened: 'not-known' as const } }
    expect(eventsAsEvidence(open, false)).toEqual([])
    const others = eventsAsEvidence(open, true)
    expect(others).toHaveLength(askedEvents.length - 1)
    expect(others.map(({ kind }) => kind)).not.toContain('battery-disconnected')
  })

  it('name no wheel where none matters, though one was chosen', () => {
    expect(eventsAsEvidence({ rotation: { ...yes, wheel: 'LF' } }, false)).toEqual([
      { kind: 'rotation', happened: true },
    ])
  })
})

it('says of what happened how long ago that was, as people say it', () => {
  expect([0, 1, 3, 365].map(agoWords)).toEqual([
    'today',
    'yesterday',
    'about 3 days ago',
    'about 365 days ago',
  ])
})
