import { describe, expect, it } from 'vitest'
import { askedEvents, eventsAsEvidence } from './events.ts'

describe('events at the write-up', () => {
  it('that nobody asked for are absent, never "did not happen"', () => {
    expect(eventsAsEvidence(['rotation'], {}, false)).toEqual([{ kind: 'rotation', happened: true }])
  })

  it('that were all asked for by name are each a yes or a no', () => {
    const events = eventsAsEvidence(['driven-low'], { 'driven-low': 'RR' }, true)
    expect(events).toHaveLength(askedEvents.length)
    expect(events.filter(({ happened }) => happened)).toEqual([
      { kind: 'driven-low', happened: true, wheel: 'RR' },
    ])
  })
})
