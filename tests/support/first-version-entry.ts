import { randomUUID } from 'node:crypto'
import { chainEntry } from '@bayledger/ledger/append'
import { canonicalText } from '@bayledger/ledger/digests'
import type { Draft, Entry } from '@bayledger/ledger/entry'
import type { Caller, TestApp } from './app.ts'

/**
 * Writes a consent to look as the first version of its kind was written, with its fee inline, at the end of an order:
 * straight into the database, since no service takes such an entry any more. Gives the fee in cents.
 */
export const writeFirstVersionConsent = async (
  { deps, clock }: TestApp,
  desk: Caller,
  orderId: string,
): Promise<number> => {
  const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
  const last: Entry = body.entries.at(-1)
  const lookFeeCents = 47_113
  const at = clock.now().toISOString()
  const draft = {
    id: randomUUID(),
    shopId: last.shopId,
    orderId,
    kind: 'authority.given',
    version: 1,
    payload: {
      to: ['look'],
      by: { relation: 'owner', name: 'a'.repeat(64) },
      channel: 'in-person',
      lookFeeCents,
      lookFeeWaivedWithWork: false,
    },
    restsOn: [],
    writtenBy: last.writtenBy,
    deviceId: null,
    writtenAt: at,
  } as unknown as Draft
  const entry = chainEntry(draft, last, { at, given: {} })
  await deps.pool.query(
    `insert into entries (shop_id, order_id, id, seq, kind, version, payload, given, written_by, rests_on, device_id,
      written_at, received_at, previous_hash, hash)
     values ($1, $2, $3, $4, $5, 1, $6::json, '{}'::json, $7::json, '{}', null, $8, $8, $9, $10)`,
    [
      entry.shopId,
      orderId,
      entry.id,
      entry.seq,
      entry.kind,
      canonicalText(entry.payload),
      canonicalText(entry.writtenBy),
      at,
      entry.previousHash,
      entry.hash,
    ],
  )
  await deps.pool.query('update order_heads set seq = $3, hash = $4 where shop_id = $1 and order_id = $2', [
    entry.shopId,
    orderId,
    entry.seq,
    entry.hash,
  ])
  return lookFeeCents
}
