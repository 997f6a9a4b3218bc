import type { SecurityEventKind } from '@bayledger/contract/security-events'
import type { Prisma } from '@bayledger/db/generated/client'
import { v7 as newId } from 'uuid'
import type { Deps } from '../deps.ts'

/**
 * `staffId`: who did it, where that is known. `aboutId`: whom or what it was done to. `details` holds codes and counts, never a
 * secret, a cookie, nor a name as it was typed: some people type their password there.
 */
export type SecurityEvent = {
  readonly kind: SecurityEventKind
  readonly staffId: string | null
  readonly aboutId?: string | null
  readonly deviceId?: string | null
  readonly address?: string | null
  readonly details?: Prisma.InputJsonObject
}

/** Adds to the list of security events; `store` is a transaction where the event belongs to one. */
export const noteSecurityEvent = async (
  { shopId, clock }: Pick<Deps, 'shopId' | 'clock'>,
  store: Pick<Prisma.TransactionClient, 'securityEvent'>,
  { details = {}, ...event }: SecurityEvent,
): Promise<void> => {
  await store.securityEvent.create({ data: { shopId, id: newId(), at: clock.now(), ...event, details } })
}
