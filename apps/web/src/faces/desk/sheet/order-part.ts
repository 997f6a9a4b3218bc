import type { ReadOrder } from '../../../features/ledger/order-query.ts'

/** What every part of the order sheet is given; `lit` names entries that the margin points at. */
export type OrderPart = { readonly order: ReadOrder }
