import type { ReadOrder } from '../../../ledger/order.ts'

/** What every part of the order sheet is given. */
export type OrderPart = { readonly order: ReadOrder }
