import { chainEntry } from '@bayledger/ledger/append'
import { canonicalText } from '@bayledger/ledger/digests'
import type { Draft, Entry } from '@bayledger/ledger/entry'
import type { TestApp } from './app.ts'

/**
 * Writes a draft at the end of an order straight into the database, chained and named by the head, as a program of
 * another version would: for what no service of this version takes.
 */
export const writeByHand = async (
  { deps, clock }: Pick<TestApp, 'deps' | 'clock'>,
  last: Entry,
  draft: {
    readonly id: string
    readonly kind: string
    readonly version: number
    readonly payload: object
  },
): Promise<void> => {
  const at = clock.now().toISOString()
  const { shopId, orderId, writtenBy } = last
  const whole = { ...draft, shopId, orderId, restsOn: [], writtenBy, deviceId: null, writtenAt: at }
  const entry = chainEntry(whole as unknown as Draft, last, { at, given: {} })
  await deps.pool.query(
    `with written as (
       insert into entries (shop_id, order_id, id, seq, kind, version, payload, given, written_by, rests_on, device_id,
         written_at, received_at, previous_hash, hash)
       values ($1, $2, $3, $4, $5, $6, $7::json, '{}'::json, $8::json, '{}', null, $9, $9, $10, $11)
     )
     update order_heads set seq = $4, hash = $11 where shop_id = $1 and order_id = $2`,
    [
      shopId,
      orderId,
      entry.id,
      entry.seq,
      entry.kind,
      entry.version,
      canonicalText(entry.payload),
      canonicalText(entry.writtenBy),
      at,
      entry.previousHash,
      entry.hash,
    ],
  )
}
