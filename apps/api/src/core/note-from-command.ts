import type { SecurityEventKind } from '@bayledger/contract/security-events'
import type { ClientBase } from 'pg'
import { v7 as newId } from 'uuid'

/** Adds to the list of security events what a command on the machine did; nobody of the shop is known to have given it. */
export const noteFromCommand = async (
  tx: Pick<ClientBase, 'query'>,
  shopId: string,
  event: {
    readonly kind: SecurityEventKind
    readonly aboutId: string
    readonly at: Date
    readonly details?: Readonly<Record<string, unknown>>
  },
): Promise<void> => {
  const { kind, aboutId, at, details = {} } = event
  await tx.query(
    'insert into security_events (shop_id, id, at, kind, about_id, details) values ($1, $2, $3, $4, $5, $6)',
    [shopId, newId(), at, kind, aboutId, JSON.stringify({ ...details, by: 'command' })],
  )
}
