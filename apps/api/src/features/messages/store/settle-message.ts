import type { MessageState, WithheldReason } from '@bayledger/contract/messages'
import type { Pool } from 'pg'
import type { ClaimedMessage } from './claim-message.ts'

/** What a try has come to. `later` counts as a try, `postponed` does not. */
export type Settled =
  | {
      readonly state: Exclude<MessageState, 'waiting' | 'withheld'>
      readonly words: string | null
      readonly recipient: string | null
    }
  | { readonly state: 'withheld'; readonly reason: WithheldReason }
  | { readonly state: 'later'; readonly at: Date; readonly words: string; readonly recipient: string | null }
  | { readonly state: 'postponed'; readonly at: Date; readonly dueAgain: boolean }

/** Stores what became of a message, if it is still this process's. */
export const settleMessage = async (
  pool: Pool,
  { shopId, id, leaseUntil }: ClaimedMessage,
  now: Date,
  settled: Settled,
): Promise<void> => {
  const { set, values } = changesOf(settled, now)
  await pool.query(
    `update messages set ${set}, lease_until = null
     where shop_id = $1 and id = $2 and lease_until = $3 and state = 'waiting'`,
    [shopId, id, leaseUntil, ...values],
  )
}

const changesOf = (
  settled: Settled,
  now: Date,
): { readonly set: string; readonly values: readonly unknown[] } => {
  switch (settled.state) {
    case 'later':
      return {
        set: 'next_try_at = $4, server_words = $5, recipient = $6',
        values: [settled.at, settled.words, settled.recipient],
      }
    case 'postponed':
      return {
        set: `next_try_at = $4, tries = tries - 1${settled.dueAgain ? ', due_at = $4' : ''}`,
        values: [settled.at],
      }
    case 'withheld':
      return {
        set: "state = 'withheld', reason = $4, ended_at = $5, link_secret = null",
        values: [settled.reason, now],
      }
    default:
      return {
        set: 'state = $4, server_words = $5, recipient = $6, ended_at = $7, link_secret = null',
        values: [settled.state, settled.words, settled.recipient, now],
      }
  }
}
