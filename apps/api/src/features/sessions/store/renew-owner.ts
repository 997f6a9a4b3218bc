import type { ClientBase } from 'pg'

/**
 * Within a transaction: gives an owner another password with all that goes with it. Their sessions end, and the code at sign-in,
 * its printed codes, their passkeys and the printed code for a new password go, since whoever needs this has lost them or has lost
 * control of them. `at`: the server's time. Gives how many sessions ended.
 */
export const renewOwner = async (
  tx: Pick<ClientBase, 'query'>,
  {
    shopId,
    staffId,
    passwordHash,
    firstPasswordUntil,
    at,
  }: {
    readonly shopId: string
    readonly staffId: string
    readonly passwordHash: string
    /** `null`: they chose it themselves. */
    readonly firstPasswordUntil: Date | null
    readonly at: Date
  },
): Promise<number> => {
  const whose = [shopId, staffId]
  await tx.query(
    'update staff set password_hash = $3, first_password_until = $4, version = version + 1 where shop_id = $1 and id = $2',
    [...whose, passwordHash, firstPasswordUntil],
  )
  for (const table of ['second_steps', 'recovery_codes', 'passkeys', 'owner_codes'] as const)
    await tx.query(`delete from ${table} where shop_id = $1 and staff_id = $2`, whose)
  await tx.query('delete from sign_in_failures where shop_id = $1 and who = $2', whose)
  const ended = await tx.query(
    'update sessions set ended_at = $3 where shop_id = $1 and staff_id = $2 and ended_at is null',
    [...whose, at],
  )
  return ended.rowCount ?? 0
}
