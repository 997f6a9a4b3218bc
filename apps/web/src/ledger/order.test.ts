import { fold } from '@bayledger/ledger/fold'
import { type Foldable, layOnTop } from '@bayledger/ledger/fold/foldable'
import { describe, expect, it } from 'vitest'
import { oneSensorJob } from '../../../../packages/ledger/test-support/one-sensor-job.ts'
import { type OrderReply, readOnTop, unsentOf, withGained } from './order.ts'
import type { Parcel } from './parcel.ts'

type Held = Parameters<typeof withGained>[0]
type Gained = Parameters<typeof withGained>[1]

const entry = (seq: number) => ({ seq }) as Held['entries'][number]
const head = (seq: number) => ({ seq, hash: String(seq) })
const held = {
  head: head(2),
  entries: [entry(1), entry(2)],
  sides: [{ side: 'personal', digest: 'x', text: 'kept' }],
  withheld: [],
  history: null,
} as unknown as Held

it('adds the entries after the last one that is held, and the sides that are new', () => {
  const gained: Gained = {
    head: head(4),
    entries: [entry(2), entry(3), entry(4)],
    sides: [
      { side: 'personal', digest: 'x', text: 'kept' },
      { side: 'personal', digest: 'y', text: 'new' },
    ],
    withheld: [],
    history: null,
    heldAlone: false,
  }
  const merged = withGained(held, gained)
  expect(merged?.entries.map(({ seq }) => seq)).toEqual([1, 2, 3, 4])
  expect(merged?.sides.map(({ digest }) => digest)).toEqual(['x', 'y'])
  expect(merged?.head).toEqual(head(4))
})

it('gives nothing where an entry between is missing', () => {
  expect(
    withGained(held, {
      head: head(4),
      entries: [entry(4)],
      sides: [],
      withheld: [],
      history: null,
      heldAlone: false,
    }),
  ).toBeNull()
})

describe('what a tablet reads of an order', () => {
  const pen = oneSensorJob('decided')
  const replyAt = (count: number): OrderReply => {
    const entries = pen.entries().slice(0, count)
    const last = entries.at(-1)
    return {
      orderId: pen.orderId,
      head: { seq: count, hash: last?.hash },
      entries,
      sides: [],
    } as unknown as OrderReply
  }
  const written = pen.entries().length
  /** The entries from one number on, as this tablet would have written them. */
  const parcelsFrom = (seq: number): Parcel[] =>
    pen
      .entries()
      .slice(seq)
      .map(({ id, orderId, kind, version, payload, writtenAt, restsOn, writtenBy, deviceId }) => ({
        orderId,
        entries: [{ id, orderId, kind, version, payload, writtenAt, restsOn: [...restsOn] }],
        sides: [],
        says: kind,
        staffId: writtenBy.kind === 'staff' ? writtenBy.staffId : '',
        deviceId,
        heardSeq: seq,
        form: null,
      }))

  it('is what a fold of everything gives, however it came: entry by entry, on top, and then from the server', () => {
    const half = Math.floor(written / 2)
    const parcels = parcelsFrom(half)
    let read = readOnTop(replyAt(half), [])
    for (let count = 1; count <= parcels.length; count += 1)
      read = readOnTop(replyAt(half), parcels.slice(0, count))
    const whole = layOnTop(
      replyAt(half).entries as Foldable[],
      parcels.flatMap((parcel) => unsentOf([parcel], replyAt(half)).drafts),
    )
    expect(read.state).toEqual(fold(whole))
    for (let count = half + 1; count <= written; count += 1) read = readOnTop(replyAt(count), parcels)
    expect(read.state).toEqual(fold(pen.entries()))
  })

  it('is folded anew where what was read before is not its beginning', () => {
    readOnTop(replyAt(written), [])
    expect(readOnTop(replyAt(3), []).state).toEqual(fold(pen.entries().slice(0, 3)))
  })

  it('is the same object until the order gains something or something is written', () => {
    const reply = replyAt(5)
    const parcels = parcelsFrom(5)
    const read = readOnTop(reply, parcels.slice(0, 1))
    expect(readOnTop(reply, parcels.slice(0, 1))).toBe(read)
    expect(readOnTop(reply, parcels.slice(0, 2))).not.toBe(read)
  })
})
