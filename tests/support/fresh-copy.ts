import { randomBytes } from 'node:crypto'
import { digestOf, sideDigest } from '@bayledger/ledger/digests'
import { v7 as newId } from 'uuid'
import type { DemoLine } from '../../prisma/seeds/demo/order-pen.ts'
import type { DemoShop } from '../../prisma/seeds/demo-shop.ts'

/**
 * An order of the demo day under ids and salts of its own, so that each test writes an order of its own. The same vehicle
 * comes again with the same odometer, or with less than it left with: that was read twice.
 */
export const freshCopy = (
  demo: DemoShop,
  number: string,
): { readonly orderId: string; readonly lines: readonly DemoLine[] } => {
  const order = demo.orders.find((candidate) => candidate.number === number)
  if (!order) throw new Error(`no order ${number} in the demo`)
  return freshLines(order)
}

export const freshLines = (order: {
  readonly orderId: string
  readonly lines: readonly DemoLine[]
}): { readonly orderId: string; readonly lines: readonly DemoLine[] } => {
  const names = new Map<string, string>()
  // As devices make them, in the order in which they were made.
  for (const id of [order.orderId, ...order.lines.map(({ draft }) => draft.id)]) names.set(id, newId())
  for (const { digest, salt, text } of order.lines.flatMap(({ sides }) => sides)) {
    const fresh = randomBytes(32)
    names.set(salt, fresh.toString('base64'))
    names.set(digest, sideDigest(text, fresh))
  }
  const text = JSON.stringify(order.lines).replace(
    /[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[0-9a-f]{4}-[0-9a-f]{12}|[0-9a-f]{64}|[A-Za-z0-9+/]{43}=/g,
    (name) => names.get(name) ?? name,
  )
  return { orderId: names.get(order.orderId) ?? '', lines: withOwnDigests(text).map(readTwice) }
}

const readTwice = (line: DemoLine): DemoLine => {
  const { draft } = line
  return draft.kind === 'order.opened'
    ? { ...line, draft: { ...draft, payload: { ...draft.payload, odometerConfirmed: true } } }
    : line
}

/** An estimate is named by the digest of its scope, which has other sides now: so has every answer to it. */
const withOwnDigests = (text: string): DemoLine[] => {
  const issued = (JSON.parse(text) as DemoLine[]).flatMap(({ draft }) =>
    draft.kind === 'estimate.issued' ? [draft.payload] : [],
  )
  return JSON.parse(
    issued.reduce((lines, { digest, scope }) => lines.replaceAll(digest, digestOf(scope)), text),
  )
}
