import type { Prisma, PrismaClient } from '@bayledger/db/generated/client'
import { AppError } from './app-error.ts'

export type OnceKey = {
  readonly shopId: string
  readonly actor: string
  readonly key: string
  readonly requestHash: string
  readonly at: Date
  /** For work that takes longer than the database's usual patience. */
  readonly timeout?: number
}

/**
 * Does `work` once for a key, in one transaction with the key's row: a repeat is answered from what was stored, a
 * second copy under way waits for the first, and a failure frees the key.
 */
export const once = async <Reply extends object>(
  prisma: PrismaClient,
  { shopId, actor, key, requestHash, at, timeout }: OnceKey,
  work: (tx: Prisma.TransactionClient) => Promise<Reply>,
): Promise<Reply> =>
  prisma.$transaction(
    async (tx) => {
      const inserted = await tx.$executeRaw`
      insert into idempotency_keys (shop_id, actor, key, request_hash, status, reply, created_at)
      values (${shopId}::uuid, ${actor}, ${key}, ${requestHash}, 102, '{}'::json, ${at})
      on conflict do nothing`
      const where = { shopId_actor_key: { shopId, actor, key } }
      if (inserted === 0) {
        const stored = await tx.idempotencyKey.findUniqueOrThrow({ where })
        if (stored.requestHash !== requestHash) throw new AppError({ code: 'IDEMPOTENCY_KEY_REUSED' })
        return stored.reply as Reply
      }
      const reply = await work(tx)
      await tx.idempotencyKey.update({ where, data: { status: 201, reply: reply as Prisma.InputJsonValue } })
      return reply
    },
    timeout === undefined ? {} : { timeout },
  )
