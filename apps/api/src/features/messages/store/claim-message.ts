import type { MessageChannel, MessagePurpose } from '@bayledger/contract/messages'
import type { Pool } from 'pg'
import { giveUpMs, leaseMs } from '../policy.ts'

/** A message that this process alone has until `leaseUntil`. */
export type ClaimedMessage = {
  readonly shopId: string
  readonly id: string
  readonly orderId: string
  readonly purpose: MessagePurpose
  readonly channel: MessageChannel
  readonly madeBy: { readonly kind: string }
  readonly createdAt: Date
  readonly inQuietHours: boolean
  readonly tries: number
  readonly linkId: string | null
  readonly linkSecret: string | null
  readonly unsubscribe: string
  readonly leaseUntil: Date
}

type Fresh = { readonly linkId: string; readonly linkSecret: string; readonly unsubscribe: string }

/**
 * Takes the message that is due longest, by one of the channels that are set. What an earlier try has made of it, its link
 * and its secrets, stays. A message whose process died is free again once its lease is over.
 */
export const claimMessage = async (
  pool: Pool,
  now: Date,
  channels: readonly MessageChannel[],
  fresh: Fresh,
): Promise<ClaimedMessage | null> => {
  const { rows } = await pool.query<ClaimedMessage>(
    `update messages m set lease_until = $2, tries = m.tries + 1, unsubscribe = coalesce(m.unsubscribe, $4),
       link_id = case when m.purpose in ('estimate', 'report') then coalesce(m.link_id, $5::uuid) end,
       link_secret = case when m.purpose in ('estimate', 'report') then coalesce(m.link_secret, $6) end
     from (
       select shop_id, id from messages
       where state = 'waiting' and next_try_at <= $1 and channel = any ($3) and (lease_until is null or lease_until < $1)
       order by next_try_at limit 1 for update skip locked
     ) due
     where m.shop_id = due.shop_id and m.id = due.id
     returning m.shop_id as "shopId", m.id, m.order_id as "orderId", m.purpose, m.channel, m.made_by as "madeBy",
       m.created_at as "createdAt", m.in_quiet_hours as "inQuietHours", m.tries, m.link_id as "linkId",
       m.link_secret as "linkSecret", m.unsubscribe, m.lease_until as "leaseUntil"`,
    [now, new Date(now.getTime() + leaseMs), channels, fresh.unsubscribe, fresh.linkId, fresh.linkSecret],
  )
  return rows[0] ?? null
}

/** Gives up what could not be handed over for days, and what no carrier was there for. */
export const giveUpOld = async (pool: Pool, now: Date): Promise<void> => {
  await pool.query(
    `update messages set state = 'given-up', ended_at = $1, link_secret = null, lease_until = null
     where state = 'waiting' and next_try_at <= $1 and due_at < $2 and (lease_until is null or lease_until < $1)`,
    [now, new Date(now.getTime() - giveUpMs)],
  )
}
