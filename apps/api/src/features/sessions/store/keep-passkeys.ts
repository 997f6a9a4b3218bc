import type { Passkey } from '@bayledger/db/generated/client'
import type { Deps } from '../../../deps.ts'
import type { Holder, Purpose } from '../policy.ts'

export type PasskeyRow = Passkey

const nameOf = (holder: Holder): string =>
  'sessionId' in holder ? `session:${holder.sessionId}` : `browser:${holder.browserHash}`

/** Keeps what is to be signed, in place of what was to be signed before; those that are over are forgotten. */
export const keepChallenge = async (
  { prisma, shopId, clock }: Deps,
  asked: {
    readonly holder: Holder
    readonly purpose: Purpose
    readonly challenge: string
    readonly expiresAt: Date
  },
): Promise<void> => {
  const { challenge, expiresAt, purpose } = asked
  const key = { shopId, holder: nameOf(asked.holder), purpose }
  await prisma.passkeyChallenge.deleteMany({ where: { shopId, expiresAt: { lt: clock.now() } } })
  await prisma.passkeyChallenge.upsert({
    where: { shopId_holder_purpose: key },
    create: { ...key, challenge, expiresAt },
    update: { challenge, expiresAt },
  })
}

/** Takes what was to be signed, once; `null`: there is nothing, or it is over. */
export const takeChallenge = async (
  { pool, shopId, clock }: Deps,
  holder: Holder,
  purpose: Purpose,
): Promise<string | null> => {
  const { rows } = await pool.query<{ challenge: string; expiresAt: Date }>({
    name: 'take-passkey-challenge',
    text: `delete from passkey_challenges where shop_id = $1 and holder = $2 and purpose = $3
      returning challenge, expires_at as "expiresAt"`,
    values: [shopId, nameOf(holder), purpose],
  })
  const [taken] = rows
  return taken && taken.expiresAt > clock.now() ? taken.challenge : null
}

export const listPasskeys = ({ prisma, shopId }: Deps, staffId: string): Promise<PasskeyRow[]> =>
  prisma.passkey.findMany({ where: { shopId, staffId }, orderBy: [{ addedAt: 'asc' }, { id: 'asc' }] })

/** The passkey of this shop with this id of its own, and whose it is. */
export const findByCredential = ({ prisma, shopId }: Deps, credentialId: string) =>
  prisma.passkey.findUnique({
    where: { shopId_credentialId: { shopId, credentialId } },
    include: { staff: { select: { active: true } } },
  })

/** `false`: it is kept already. */
export const insertPasskey = async (
  { prisma, shopId }: Deps,
  passkey: Omit<PasskeyRow, 'shopId' | 'lastUsedAt'>,
): Promise<boolean> => {
  const { count } = await prisma.passkey.createMany({ data: [{ shopId, ...passkey }], skipDuplicates: true })
  return count === 1
}

/** Notes how often a passkey has signed; `false`: less often than before, or as often. One that does not count says 0 always. */
export const countSignature = async (
  { prisma, shopId, clock }: Deps,
  id: string,
  signCount: bigint,
): Promise<boolean> => {
  const { count } = await prisma.passkey.updateMany({
    where: { shopId, id, ...(signCount === 0n ? { signCount: 0n } : { signCount: { lt: signCount } }) },
    data: { signCount, lastUsedAt: clock.now() },
  })
  return count === 1
}

/** `false`: there was none. */
export const removePasskey = async (
  { prisma, shopId }: Deps,
  staffId: string,
  id: string,
): Promise<boolean> => (await prisma.passkey.deleteMany({ where: { shopId, staffId, id } })).count === 1
