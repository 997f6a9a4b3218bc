import type { Agreement } from '@bayledger/ledger/agreement'
import type { Deps } from '../../deps.ts'

export const listStaff = (deps: Deps) =>
  deps.prisma.staff.findMany({ where: { shopId: deps.shopId, active: true }, orderBy: { name: 'asc' } })

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
