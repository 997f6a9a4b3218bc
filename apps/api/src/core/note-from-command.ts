import type { SecurityEventKind } from '@bayledger/contract/security-events'
import type { ClientBase } from 'pg'
import { v7 as newId } from 'uuid'

type Happened = {
  readonly kind: SecurityEventKind
  readonly staffId?: string
  readonly aboutId?: string
  readonly address?: string
  readonly at: Date
  readonly details?: Readonly<Record<string, unknown>>
}

/** Adds to the list of security events within a transaction of plain statements. */
export const insertSecurityEvent = async (
  tx: Pick<ClientBase, 'query'>,
  shopId: string,
  { kind, staffId, aboutId, address, at, details = {} }: Happened,
): Promise<void> => {
  await tx.query(
    `insert into security_events (shop_id, id, at, kind, staff_id, about_id, address, details)
     values ($1, $2, $3, $4, $5, $6, $7, $8)`,
    [shopId, newId(), at, kind, staffId ?? null, aboutId ?? null, address ?? null, JSON.stringify(details)],
  )
}

/** The same for what a command on the machine did; nobody of the shop is known to have given it. */
export const noteFromCommand = (
  tx: Pick<ClientBase, 'query'>,
  shopId: string,
  { details = {}, ...event }: Omit<Happened, 'staffId' | 'address'> & { readonly aboutId: string },
): Promise<void> => insertSecurityEvent(tx, shopId, { ...event, details: { ...details, by: 'command' } })
