import type { ReadOrder } from '../../../ledger/order.ts'

/** What every part of the order sheet is given; `lit` names entries that the margin points at. */
export type OrderPart = { readonly order: ReadOrder }
