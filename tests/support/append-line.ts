import { sidesNamedIn } from '@bayledger/ledger/sides'
import { forShop, type Parts } from '../../apps/api/src/deps.ts'
import { appendDraft } from '../../apps/api/src/features/entries/service/append-draft.ts'
import type { DemoLine } from '../../prisma/seeds/demo/order-pen.ts'

/** Appends one line of an order as the service does, at the time at which it was received; throws where it is refused. */
export const appendLine = async (
  parts: Parts,
  shopId: string,
  { draft, sides, given, receivedAt }: DemoLine,
): Promise<void> => {
  const { orderNumber: _, ...rest } = given
  const named = new Map(sidesNamedIn(draft).map(({ side, digest }) => [digest, side]))
  const then = { ...parts, clock: { now: () => new Date(receivedAt) } }
  const written = await appendDraft(forShop(then, shopId), draft, {
    sides: sides.map(({ digest, salt, text }) => ({
      side: named.get(digest) ?? 'personal',
      digest,
      salt: Buffer.from(salt, 'base64'),
      text,
    })),
    given: rest,
    plansAfterDecision: false,
  })
  if (!written.admitted) throw new Error(`${draft.kind} is refused: ${JSON.stringify(written)}`)
}
