import type { Role } from '@bayledger/ledger/role'
import type { ComponentType } from 'react'

export type ShopPageProps = {
  /** The record that is open, `new` for one that is added, `null` for the list. */
  open: string | null
  onOpen: (id: string | null) => void
}

/** A page of the owner's left list. */
export type ShopPage = {
  /** Its part of the address. */
  readonly path: string
  readonly name: string
  /** Who may open it; the contract says who may do what there. */
  readonly roles: readonly Role[]
  /** A hook: what needs doing there, in one line; `null` if nothing does. */
  readonly useNeeds: () => string | null
  readonly Page: ComponentType<ShopPageProps>
}

export const nothingNeeded = () => null
