import { describe, expect, it } from 'vitest'
import { arrivalOf } from '../test-support/one-sensor-job.ts'
import { idOf } from '../test-support/seeded-ids.ts'
import { shopId, tablet, technician } from '../test-support/shop.ts'
import { parseDraft } from './draft.ts'

const sender = { shopId, writtenBy: { kind: 'staff' as const, staffId: technician.id }, deviceId: tablet }
const draft = {
  id: idOf('draft'),
  orderId: idOf('order'),
  kind: 'wheel.checked',
  version: 1,
  payload: arrivalOf('LF'),
  writtenAt: '2026-01-12T15:00:00.000Z',
  restsOn: [],
}

const faultsOf = (input: unknown) => {
  const parsed = parseDraft(input, sender)
  return parsed.ok ? [] : parsed.faults
}

describe('a draft', () => {
  it('is read with its sender', () => {
    expect(parseDraft(draft, sender)).toEqual({ ok: true, draft: { ...draft, ...sender } })
  })

  it('of a newer kind or version is put off, not refused', () => {
    expect(parseDraft({ ...draft, kind: 'tire.sung-to' }, sender)).toMatchObject({ ok: false, newer: true })
    expect(parseDraft({ ...draft, version: 2 }, sender)).toMatchObject({ ok: false, newer: true })
  })

  it('names every field that is wrong, what was found and what is allowed', () => {
    const payload = { ...draft.payload, wheel: 'XX', gauge: { pressure: { value: 'high', unit: 'psi' } } }
    expect(faultsOf({ ...draft, payload })).toEqual(
      expect.arrayContaining([
        { field: 'payload.wheel', found: '"XX"', allowed: 'one of "LF", "RF", "RR", "LR", "SP"' },
        { field: 'payload.gauge.pressure.value', found: '"high"', allowed: 'number' },
      ]),
    )
  })

  it('with an unknown field is a fault; nothing is dropped in silence', () => {
    expect(faultsOf({ ...draft, payload: { ...draft.payload, mood: 'fine' } })).toEqual([
      { field: 'payload.mood', found: 'an unknown field', allowed: 'no such field; check its spelling' },
    ])
    expect(faultsOf({ ...draft, urgent: true })[0]?.field).toBe('urgent')
  })

  it('may hold no control characters', () => {
    const payload = { ...draft.payload, notPossible: [{ field: 'gauge', why: 'cap\u0007seized' }] }
    expect(faultsOf({ ...draft, payload })[0]?.field).toBe('payload.notPossible.0.why')
  })

  it('of something that is no entry at all is refused', () => {
    for (const nothing of [null, 7, 'entry', []]) expect(faultsOf(nothing).length).toBeGreaterThan(0)
  })
})
