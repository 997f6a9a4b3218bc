import {
  AskedChannel,
  AskedPurpose,
  type Message,
  MessageChannel,
  type MessageChoice,
  MessagePurpose,
  MessageState,
  WithheldReason,
} from '@bayledger/contract/messages'
import * as z from 'zod/mini'
import type { MessageRow } from './store.ts'

export const presentMessage = (row: MessageRow): Message => ({
  messageId: row.id,
  purpose: MessagePurpose.parse(row.purpose),
  channel: MessageChannel.parse(row.channel),
  state: MessageState.parse(row.state),
  reason: z.nullable(WithheldReason).parse(row.reason),
  createdAt: row.createdAt.toISOString(),
  dueAt: row.dueAt.toISOString(),
  nextTryAt: row.state === 'waiting' ? row.nextTryAt.toISOString() : null,
  tries: row.tries,
  recipient: row.recipient,
  serverWords: row.serverWords,
  endedAt: row.endedAt?.toISOString() ?? null,
  linkId: row.linkId,
})

export const presentChoice = (row: {
  readonly purpose: string
  readonly channel: string
  readonly allowed: boolean
}): MessageChoice => ({
  purpose: AskedPurpose.parse(row.purpose),
  channel: AskedChannel.parse(row.channel),
  allowed: row.allowed,
})

/** When the customer spoke of it last; `null`: never. */
export const askedAt = (
  rows: readonly { readonly purpose: string; readonly channel: string; readonly madeAt: Date }[],
  purpose: string,
  channel: string,
): string | null =>
  rows.find((row) => row.purpose === purpose && row.channel === channel)?.madeAt.toISOString() ?? null
