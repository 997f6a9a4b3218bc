import type { SideKind } from '@bayledger/ledger/side-kinds'

/** One table a kind of side, all of one form. */
export const sideTables: Readonly<Record<SideKind, string>> = {
  personal: 'personal_texts',
  contact: 'contact_sides',
  money: 'money_sides',
  shown: 'shown_sides',
}
