import type { Entry } from '@bayledger/ledger/entry'
import { type MessageToKeep, projection } from './projection.ts'

const dayMs = 24 * 60 * 60_000

/**
 * A reminder of the torque check goes two days after the hand-back: at the usual 37 miles a day (US Federal Highway
 * Administration, 13,476 miles a year and driver, from memory) the 50 to 100 miles are driven then.
 */
const retorqueAfterMs = 2 * dayMs

/** A reminder of work that was put off to no day goes after this; common practice, no source. */
const deferredAfterMs = 30 * dayMs

/** What an entry causes by itself, whoever writes it. Whether the customer wants it is asked when it goes. */
const causedBy = (entry: Entry): readonly MessageToKeep[] => {
  const message = (purpose: MessageToKeep['purpose'], afterMs: number): MessageToKeep => ({
    causedBy: entry.id,
    purpose,
    channel: 'email',
    dueAt: new Date(Date.parse(entry.receivedAt) + afterMs).toISOString(),
    inQuietHours: false,
    linkId: null,
  })
  switch (entry.kind) {
    case 'report.sealed':
      return [message('report', 0)]
    case 'order.handed_back':
      return entry.payload.retorqueAdvised ? [message('retorque', retorqueAfterMs)] : []
    case 'estimate.decided': {
      const later = entry.payload.answers.filter(({ answer }) => answer === 'deferred')
      const [day] = later.flatMap(({ deferredUntil }) => deferredUntil ?? []).toSorted()
      if (later.length === 0) return []
      const put = message('deferred', deferredAfterMs)
      return [day === undefined ? put : { ...put, dueAt: `${day}T12:00:00.000Z` }]
    }
    default:
      return []
  }
}

/** Messages to the customer, in the same transaction as what causes them: none is lost and none sent for nothing. */
export const messageRows = projection({
  name: 'message',
  columns: {
    caused_by: 'uuid',
    purpose: 'text',
    channel: 'text',
    due_at: 'timestamptz',
    in_quiet_hours: 'boolean',
    link_id: 'uuid',
    made_by: 'json',
    created_at: 'timestamptz',
  },
  rowsOf: ({ entries, messages }) =>
    entries.flatMap((entry) =>
      [...causedBy(entry), ...messages.filter((one) => one.causedBy === entry.id)].map((one) => ({
        caused_by: one.causedBy,
        purpose: one.purpose,
        channel: one.channel,
        due_at: one.dueAt,
        in_quiet_hours: one.inQuietHours,
        link_id: one.linkId,
        made_by: entry.writtenBy,
        created_at: entry.receivedAt,
      })),
    ),
  sql: (from) => `message as (
    insert into messages (shop_id, id, order_id, purpose, channel, caused_by, made_by, created_at, due_at, next_try_at,
      in_quiet_hours, link_id)
    select shop_id, gen_random_uuid(), order_id, purpose, channel, caused_by, made_by, created_at, due_at, due_at,
      in_quiet_hours, link_id
    from ${from}
    on conflict do nothing
  )`,
  rebuild: 'never',
})
