import { inTransaction } from '@bayledger/db/transaction'
import type { Role } from '@bayledger/ledger/role'
import type { Pool } from 'pg'
import { noteFromCommand } from '../../../core/note-from-command.ts'

export type RolesChange =
  | { readonly changed: true; readonly name: string; readonly before: readonly Role[] }
  | { readonly changed: false; readonly why: 'unknown' | 'in-several-shops' | 'last-owner' }

/**
 * Gives a person other roles, in one transaction. Whoever appends with the roles from before is refused from its commit
 * on, in every process: the change raises the version of the shop's facts. A shop always keeps an owner.
 */
export const changeRoles = (
  pool: Pool,
  { signInName, shopName, roles }: { signInName: string; shopName: string | null; roles: readonly Role[] },
): Promise<RolesChange> =>
  inTransaction(pool, async (tx) => {
    const found = await tx.query<{ shop_id: string; id: string; name: string; roles: Role[] }>(
      `select p.shop_id, p.id, p.name, p.roles from staff p join shops s on s.id = p.shop_id
       where p.sign_in_name = $1 and ($2::text is null or s.name = $2)`,
      [signInName, shopName],
    )
    const [person, another] = found.rows
    if (!person) return { changed: false, why: 'unknown' }
    if (another) return { changed: false, why: 'in-several-shops' }
    // Locked in one order, so that two who each remove an owner come one after the other.
    const owners = await tx.query<{ id: string }>(
      `select id from staff where shop_id = $1 and active and 'owner' = any (roles) order by id for update`,
      [person.shop_id],
    )
    if (!roles.includes('owner') && owners.rows.every(({ id }) => id === person.id))
      return { changed: false, why: 'last-owner' }
    const before = await tx.query<{ roles: Role[] }>(
      'select roles from staff where shop_id = $1 and id = $2 for update',
      [person.shop_id, person.id],
    )
    await tx.query('update staff set roles = $3, version = version + 1 where shop_id = $1 and id = $2', [
      person.shop_id,
      person.id,
      roles,
    ])
    const { shop_id: shopId, id: aboutId } = person
    await noteFromCommand(tx, shopId, { kind: 'person-changed', aboutId, at: new Date(), details: { roles } })
    return { changed: true, name: person.name, before: before.rows[0]?.roles ?? [] }
  })
