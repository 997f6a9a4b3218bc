import { inTransaction } from '@bayledger/db/transaction'
import type { Pool } from 'pg'
import { noteFromCommand } from '../../../core/note-from-command.ts'

export type Recovery =
  | { readonly recovered: true; readonly name: string; readonly sessionsEnded: number }
  | { readonly recovered: false; readonly why: 'unknown' | 'in-several-shops' | 'no-owner' }

/**
 * Gives an owner another password, in one transaction with all that goes with it: their sessions end, and the code at sign-in, its
 * printed codes and their passkeys go, since whoever needs this has lost them or has lost control of them. `at`: the server's time.
 */
export const recoverOwner = (
  pool: Pool,
  wanted: {
    readonly signInName: string
    readonly shopName: string | null
    readonly passwordHash: string
    readonly at: Date
  },
): Promise<Recovery> =>
  inTransaction(pool, async (tx) => {
    const { rows } = await tx.query<{ shop_id: string; id: string; name: string; is_owner: boolean }>(
      `select p.shop_id, p.id, p.name, p.active and 'owner' = any (p.roles) as is_owner
       from staff p join shops s on s.id = p.shop_id
       where p.sign_in_name = $1 and ($2::text is null or s.name = $2) order by p.shop_id for update of p`,
      [wanted.signInName, wanted.shopName],
    )
    const [person, another] = rows
    if (!person) return { recovered: false, why: 'unknown' }
    if (another) return { recovered: false, why: 'in-several-shops' }
    if (!person.is_owner) return { recovered: false, why: 'no-owner' }
    const { shop_id: shopId, id: staffId } = person
    const whose = [shopId, staffId]
    await tx.query(
      'update staff set password_hash = $3, version = version + 1 where shop_id = $1 and id = $2',
      [...whose, wanted.passwordHash],
    )
    for (const table of ['second_steps', 'recovery_codes', 'passkeys'] as const)
      await tx.query(`delete from ${table} where shop_id = $1 and staff_id = $2`, whose)
    await tx.query('delete from sign_in_failures where shop_id = $1 and who = $2', whose)
    const ended = await tx.query(
      'update sessions set ended_at = $3 where shop_id = $1 and staff_id = $2 and ended_at is null',
      [...whose, wanted.at],
    )
    await noteFromCommand(tx, shopId, { kind: 'owner-recovered', aboutId: staffId, at: wanted.at })
    return { recovered: true, name: person.name, sessionsEnded: ended.rowCount ?? 0 }
  })
