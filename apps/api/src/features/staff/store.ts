import type { Prisma } from '@bayledger/db/generated/client'
import type { Agreement } from '@bayledger/ledger/agreement'
import type { Deps } from '../../deps.ts'

/** Everyone who works here or did, by name. */
export const listStaff = (deps: Deps) =>
  deps.prisma.staff.findMany({ where: { shopId: deps.shopId }, orderBy: { name: 'asc' } })

export const isActive = async ({ prisma, shopId }: Deps, id: string): Promise<boolean> =>
  (await prisma.staff.count({ where: { shopId, id, active: true } })) === 1

export const insertProof = async (
  deps: Pick<Deps, 'prisma' | 'shopId'>,
  proof: {
    readonly tokenHash: string
    readonly staffId: string
    readonly agreesTo: Agreement
    readonly now: Date
    readonly expiresAt: Date
  },
): Promise<void> => {
  const { tokenHash, staffId, agreesTo, now, expiresAt } = proof
  await deps.prisma.secondPersonProof.create({
    data: { shopId: deps.shopId, tokenHash, staffId, ...agreesTo, createdAt: now, expiresAt },
  })
}

/** Whether this token was earned by this person for this figure, and may still be used. */
export const findFigureProof = (
  tx: Prisma.TransactionClient,
  shopId: string,
  of: { readonly tokenHash: string; readonly staffId: string; readonly digest: string; readonly now: Date },
) =>
  tx.secondPersonProof.findFirst({
    where: {
      shopId,
      tokenHash: of.tokenHash,
      staffId: of.staffId,
      digest: of.digest,
      kind: 'sheet-figure',
      expiresAt: { gte: of.now },
    },
  })
