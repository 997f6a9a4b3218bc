import { describe, expect, it } from 'vitest'
import { oneSensorJob, sealOf } from '../../test-support/one-sensor-job.ts'
import { wordsOf } from '../../test-support/seeded-ids.ts'
import { advisor, factsAt, shopId } from '../../test-support/shop.ts'
import type { Draft } from '../entry.ts'
import { ledgerPen } from '../ledger-pen.ts'
import { sealGate } from './gates.ts'
import { openHolds } from './open-holds.ts'

const desk = { by: advisor, deviceId: null }
const receivedAt = '2026-01-12T17:00:00.000Z'

/** A worked order with one more note, written at `writtenAt` by its device's clock. */
const withNoteAt = (writtenAt: string) => {
  const pen = oneSensorJob('worked')
  const draft = { ...pen.draft('note.added', { words: wordsOf('a note') }, desk), writtenAt } as Draft
  const appended = ledgerPen(shopId, pen.orderId, pen.entries()).attempt(
    draft,
    factsAt(receivedAt, draft.writtenBy),
  )
  if (!appended.admitted) throw new Error(appended.code)
  return { pen, entries: [...pen.entries(), appended.entry], holds: appended.entry.given.holds ?? [] }
}

describe("a device's clock", () => {
  it.each([
    '0001-01-01T00:00:00.000Z',
    '1970-01-01T00:00:00.000Z',
    '2026-01-08T16:59:59.999Z',
    '2026-01-12T17:10:00.001Z',
    '9999-12-31T23:59:59.999Z',
  ])('at %s is far off: the entry is kept, with a hold', (writtenAt) => {
    expect(withNoteAt(writtenAt).holds).toEqual([
      { code: 'device-clock-doubtful', gate: 'seal', wheel: null, values: { writtenAt, receivedAt } },
    ])
  })

  it.each(['2026-01-08T17:00:00.000Z', '2026-01-12T16:00:00.000Z', '2026-01-12T17:10:00.000Z'])(
    'at %s may be: nothing is held',
    (writtenAt) => {
      expect(withNoteAt(writtenAt).holds).toEqual([])
    },
  )
})

describe('a hold on the time of an entry', () => {
  it('keeps the report from being sealed until a person settles it, or the entry is withdrawn', () => {
    const pen = oneSensorJob('worked')
    const before = pen.entries().length
    const note = pen.write(
      'note.added',
      { words: wordsOf('a note') },
      { ...desk, facts: { now: '2027-01-01T00:00:00.000Z' } },
    )
    expect(pen.entries()).toHaveLength(before + 1)
    expect(openHolds(pen.state()).map(({ written }) => written.entryId)).toEqual([note.id])
    expect(sealGate(pen.state()).map(({ code }) => code)).toEqual(['device-clock-doubtful'])
    expect(pen.attempt('report.sealed', sealOf(pen), desk)).toMatchObject({
      admitted: false,
      code: 'SEAL_GATE_CLOSED',
    })
    const settled = pen.write('hold.settled', { entryId: note.id, words: wordsOf('the clock was set') }, desk)
    expect(openHolds(pen.state())).toEqual([])
    expect(sealGate(pen.state())).toEqual([])
    expect(pen.strike(settled.id, advisor)).toMatchObject({ admitted: true })
    expect(openHolds(pen.state())).toHaveLength(1)
    expect(pen.strike(note.id, advisor)).toMatchObject({ admitted: true })
    expect(openHolds(pen.state())).toEqual([])
  })
})
