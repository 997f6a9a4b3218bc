import { inTransaction } from '@bayledger/db/transaction'
import type { Pool } from 'pg'
import { noteFromCommand } from '../../../core/note-from-command.ts'
import { renewOwner } from './renew-owner.ts'

export type Recovery =
  | { readonly recovered: true; readonly name: string; readonly sessionsEnded: number }
  | { readonly recovered: false; readonly why: 'unknown' | 'in-several-shops' | 'no-owner' }

/** Gives an owner another password, in one transaction with all that goes with it (`renewOwner`). `at`: the server's time. */
export const recoverOwner = (
  pool: Pool,
  wanted: {
    readonly signInName: string
    readonly shopName: string | null
    readonly passwordHash: string
    readonly firstPasswordUntil: Date
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
    const sessionsEnded = await renewOwner(tx, { ...wanted, shopId, staffId })
    await noteFromCommand(tx, shopId, { kind: 'owner-recovered', aboutId: staffId, at: wanted.at })
    return { recovered: true, name: person.name, sessionsEnded }
  })
