import type { Wake } from '@bayledger/contract/live'

/** An order that an append moved, with the number of its newest entry. */
export type Moved = { readonly orderId: string; readonly seq: number }

/** What was written in one shop since its last wake-up. */
export type Gathered = { readonly orders: Map<string, number>; tray: boolean }

/** PostgreSQL carries at most 8,000 bytes a message (manual, NOTIFY); one order takes about 45. */
const mostOrders = 150

/** A shop and what moved in it, as the text that processes send each other. */
export const toMessage = (shopId: string, { orders, tray }: Gathered): string => {
  const named =
    orders.size > mostOrders ? 'all' : [...orders].map(([orderId, seq]) => `${orderId}:${seq}`).join(',')
  return [shopId, named, tray ? 'tray' : ''].join(' ')
}

/** Reads what `toMessage` wrote; anything else wakes nobody. */
export const fromMessage = (message: string): { readonly shopId: string; readonly wake: Wake } | null => {
  const [shopId, named, tray] = message.split(' ')
  if (!shopId || named === undefined) return null
  if (named === 'all') return { shopId, wake: { all: true, orders: [], tray: true } }
  const orders = named
    .split(',')
    .filter((part) => part !== '')
    .map((part) => part.split(':'))
    .map(([orderId = '', seq]) => ({ orderId, seq: Number(seq) }))
  return { shopId, wake: { all: false, orders, tray: tray === 'tray' } }
}
