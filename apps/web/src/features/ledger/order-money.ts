import { type MoneySides, moneySidesOf } from '@bayledger/ledger/questions/money'
import type { ReadOrder } from '../../ledger/order.ts'

/** The money of an order that this session was given. */
export const orderMoney = ({ entries, sides }: Pick<ReadOrder, 'entries' | 'sides'>): MoneySides =>
  moneySidesOf(
    entries,
    sides.filter(({ side }) => side === 'money'),
  )
