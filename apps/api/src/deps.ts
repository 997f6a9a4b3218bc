import type { BackupState } from '@bayledger/contract/backup-state'
import type { PrismaClient } from '@bayledger/db/generated/client'
import type { StampVerdict } from '@bayledger/report/stamp/judge-stamp'
import type { Pool } from 'pg'
import type { Carriers } from './carriers/carrier.ts'
import type { LiveHub } from './http/live.ts'
import type { Moved } from './http/wake-message.ts'
import type { DigestPlaces } from './proof/write-digest.ts'

/** The only source of the present moment; tests pass their own. */
export type Clock = { readonly now: () => Date }

export type SigningIdentity = { readonly certificatePem: string; readonly privateKeyPem: string }

/** The keys with which the reports of each shop are sealed. */
export type Signing = {
  /** A shop's key; refused where it is missing, past its days, or another than the shop's. */
  readonly signingOf: (shopId: string) => Promise<SigningIdentity>
  /** What keeps reports from being sealed, in words for whoever runs the server; none: nothing does. */
  readonly signingTroubles: () => Promise<readonly string[]>
}

/** The key to which tablets seal what was tapped on them: its public half, and what opens a box; `null`: none of ours. */
export type SealingKey = {
  readonly publicKey: string
  readonly open: (box: string) => Promise<string | null>
}

/** Who stamps with the time (RFC 3161), and how such stamps are judged. */
export type Stamping = {
  /** The host that stamps; `null` where none is set. */
  readonly host: string | null
  /** A token over bytes, which was judged; `null` where there is none to be had. Never throws, and is back within some seconds. */
  readonly stamp: (bytes: Uint8Array) => Promise<Uint8Array | null>
  /** The same, where somebody waits for it: `null` at once while the host has been silent for some tries. */
  readonly stampWhileWaited: (bytes: Uint8Array) => Promise<Uint8Array | null>
  readonly judge: (token: Uint8Array, bytes: Uint8Array) => Promise<StampVerdict>
}

/** What the process is made of, whichever shops its database holds; put together in `main.ts` or by a test. */
export type Parts = {
  readonly prisma: PrismaClient
  readonly pool: Pool
  readonly clock: Clock
  readonly tls: boolean
  /** Printed in links and reports; without a slash at the end. */
  readonly publicAddress: string
  /** The keys for sealing reports. */
  readonly signing: Signing
  readonly sealing: SealingKey
  /** Who stamps sealed reports with the time. */
  readonly stamping: Stamping
  readonly live: LiveHub
  /** The ways by which messages leave the shop. */
  readonly carriers: Carriers
  readonly backups: () => BackupState
  /** Orders of the demo that are not loaded to their end yet; until then they are nobody's work, and not on the floor. */
  readonly loading: ReadonlySet<string>
  /** Where daily digests and notes of erasures lie, and the key that signs them. */
  readonly digestPlaces: DigestPlaces
}

/** What a use case works with: the parts of the process, scoped to the shop of the request. */
export type Deps = Omit<Parts, 'live' | 'signing'> & {
  readonly shopId: string
  readonly signing: () => Promise<SigningIdentity>
  readonly live: { readonly wrote: (what: readonly Moved[] | 'tray') => void }
}

/** The only place where parts are scoped to a shop. */
export const forShop = ({ live, signing, ...parts }: Parts, shopId: string): Deps => ({
  ...parts,
  shopId,
  signing: () => signing.signingOf(shopId),
  live: { wrote: (what) => live.wrote(shopId, what) },
})
