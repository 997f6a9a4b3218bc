import type { Awaited } from '@bayledger/contract/endpoint'
import type { Role } from '@bayledger/ledger/role'

declare const minted: unique symbol
type Minted = { readonly [minted]: true }

/** A person who is signed in. Only `identify` makes one: holding it is the proof. */
export type StaffActor = Minted & {
  readonly who: 'staff'
  readonly kind: 'desk' | 'bay'
  readonly shopId: string
  readonly sessionId: string
  readonly staffId: string
  readonly name: string
  readonly roles: readonly Role[]
  readonly deviceId: string | null
  readonly locationId: string | null
  readonly expiresAt: Date
  /** When they last proved that it is them. */
  readonly provenAt: Date
  /** What they have to do before anything else. */
  readonly awaits: Awaited | null
}

/** An enrolled tablet, no matter who holds it. */
export type DeviceActor = Minted & {
  readonly who: 'device'
  readonly shopId: string
  readonly deviceId: string
  readonly locationId: string
}

/** The holder of an order's link. */
export type CustomerActor = Minted & {
  readonly who: 'customer'
  readonly shopId: string
  readonly linkId: string
  readonly orderId: string
}

/** Somebody who has not signed in; no shop is theirs. */
export type NobodyActor = Minted & { readonly who: 'nobody' }

export type Actor = StaffActor | DeviceActor | CustomerActor | NobodyActor

/** Marks an actor as identified. Only `identify` calls it. */
export const mint = <A extends Actor>(found: Omit<A, typeof minted>): A => found as A

/** A session that is not over, as the store knows it. */
export type FoundSession = {
  readonly shopId: string
  readonly sessionId: string
  readonly kind: 'desk' | 'bay'
  readonly staffId: string
  readonly name: string
  readonly roles: readonly Role[]
  readonly deviceId: string | null
  readonly locationId: string | null
  readonly expiresAt: Date
  /** When they last proved that it is them. */
  readonly provenAt: Date
  /** What they have to do before anything else. */
  readonly awaits: Awaited | null
}

/**
 * `mayRecall`: a session from memory will do, because the write itself refuses one that is over. `isAct`: a person did
 * something for this call, as opposed to a page that reads by itself.
 */
export type SessionCall = { readonly mayRecall: boolean; readonly isAct: boolean }
