import { inTransaction } from '@bayledger/db/transaction'
import type { Pool } from 'pg'
import { noteFromCommand } from '../../../core/note-from-command.ts'

export type Revocation =
  | { readonly revoked: true; readonly name: string; readonly sessionsEnded: number }
  | { readonly revoked: false; readonly why: 'unknown' }
  /** Several tablets have this name: one is named by its id. */
  | { readonly revoked: false; readonly why: 'several'; readonly ids: readonly string[] }

/**
 * Puts a tablet out, by its name or id, with every session on it, in one transaction: nothing that it sends is taken
 * from the commit on. `at`: the server's time.
 */
export const revokeDevice = (pool: Pool, nameOrId: string, at: Date): Promise<Revocation> =>
  inTransaction(pool, async (tx) => {
    const { rows } = await tx.query<{ shop_id: string; id: string; name: string }>(
      'select shop_id, id, name from devices where revoked_at is null and (name = $1 or id::text = lower($1)) for update',
      [nameOrId],
    )
    const [device, ...others] = rows
    if (!device) return { revoked: false, why: 'unknown' }
    if (others.length > 0) return { revoked: false, why: 'several', ids: rows.map(({ id }) => id) }
    const values = [device.shop_id, device.id, at]
    await tx.query('update devices set revoked_at = $3 where shop_id = $1 and id = $2', values)
    const ended = await tx.query(
      'update sessions set ended_at = $3 where shop_id = $1 and device_id = $2 and ended_at is null',
      values,
    )
    await noteFromCommand(tx, device.shop_id, { kind: 'tablet-put-out', aboutId: device.id, at })
    return { revoked: true, name: device.name, sessionsEnded: ended.rowCount ?? 0 }
  })
