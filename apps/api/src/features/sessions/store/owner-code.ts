import { inTransaction } from '@bayledger/db/transaction'
import { insertSecurityEvent } from '../../../core/note-from-command.ts'
import type { Deps } from '../../../deps.ts'
import { renewOwner } from './renew-owner.ts'

export const findOwnerCode = ({ prisma, shopId }: Deps, staffId: string) =>
  prisma.ownerCode.findUnique({ where: { shopId_staffId: { shopId, staffId } } })

/** Keeps a person's code in place of the one before. */
export const keepOwnerCode = async (
  { prisma, shopId }: Deps,
  { staffId, ...code }: { readonly staffId: string; readonly codeHash: string; readonly madeAt: Date },
): Promise<void> => {
  await prisma.ownerCode.upsert({
    where: { shopId_staffId: { shopId, staffId } },
    create: { shopId, staffId, ...code },
    update: code,
  })
}

/** Uses a code up and renews the owner whose it is, or neither; `false`: it was used or replaced meanwhile. */
export const spendOwnerCode = (
  { pool, shopId }: Deps,
  {
    staffId,
    codeHash,
    passwordHash,
    address,
    at,
  }: {
    readonly staffId: string
    readonly codeHash: string
    readonly passwordHash: string
    readonly address: string
    readonly at: Date
  },
): Promise<boolean> =>
  inTransaction(pool, async (tx) => {
    const taken = await tx.query(
      'delete from owner_codes where shop_id = $1 and staff_id = $2 and code_hash = $3',
      [shopId, staffId, codeHash],
    )
    if (taken.rowCount !== 1) return false
    await renewOwner(tx, { shopId, staffId, passwordHash, firstPasswordUntil: null, at })
    await insertSecurityEvent(tx, shopId, { kind: 'owner-code-used', staffId, address, at })
    return true
  })
