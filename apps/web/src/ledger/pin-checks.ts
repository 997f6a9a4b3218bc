import type { Kept } from './kept.ts'
import { canMakeKeys, indexedDbKeys, type KeyStore } from './key-store.ts'
import { tabletVault, type Vault } from './vault.ts'

/** What became of a PIN that was checked on the tablet itself. */
export type PinCheck =
  /** `beside`: what was kept with the person's last sign-in with the server. */
  | { readonly is: 'right'; readonly version: number; readonly beside: unknown }
  | { readonly is: 'wrong' }
  | { readonly is: 'blocked'; readonly seconds: number }
  /** The person never signed in here with the server in reach, or left, or has another PIN since. */
  | { readonly is: 'unknown' }

export type PinChecks = {
  /** After a sign-in with the server. `version` is raised by the server with every change of the PIN. */
  readonly keep: (
    person: { readonly staffId: string; readonly version: number },
    pin: string,
    beside: unknown,
  ) => Promise<void>
  readonly check: (staffId: string, pin: string) => Promise<PinCheck>
  readonly knows: (staffId: string) => Promise<boolean>
  /** What was kept beside, of everyone who may sign in without the server. */
  readonly everyone: () => Promise<unknown[]>
  /** The server said who may sign in, and which version their PIN has: what is known of anyone else is dropped. */
  readonly keepOnly: (
    pins: readonly { readonly staffId: string; readonly version: number }[],
  ) => Promise<void>
}

type KeptPin = { readonly mac: ArrayBuffer; readonly version: number; readonly beside: Kept }
type Tries = { readonly wrong: number; readonly until: number }

/** From this wrong try in a row on there is a wait of a minute after each. */
const freeTries = 5
const waitMilliseconds = 60_000

const hmacKey = 'pin-key'
const pinOf = (staffId: string) => `pin/${staffId}`
const triesOf = (staffId: string) => `pin-tries/${staffId}`

/**
 * Checks PINs without the server: HMAC-SHA-256 of person and PIN under a key that cannot be read out of the browser. Tries
 * are counted in the store before they are looked at, so that a reload gives no more of them.
 */
export const makePinChecks = (store: KeyStore, vault: Vault, deviceNow: () => number): PinChecks => {
  const known = async (staffId: string) => (await store.get(pinOf(staffId))) as KeptPin | undefined

  const ownKey = async (): Promise<CryptoKey> => {
    const own = await store.get(hmacKey)
    if (own !== undefined) return own as CryptoKey
    const made = await crypto.subtle.generateKey({ name: 'HMAC', hash: 'SHA-256' }, false, ['sign', 'verify'])
    await store.put(hmacKey, made)
    return made
  }

  /** Takes a try, counted as wrong until it was right; gives the seconds to wait, 0: none. */
  const takeTry = async (staffId: string): Promise<number> => {
    const before = ((await store.get(triesOf(staffId))) as Tries | undefined) ?? { wrong: 0, until: 0 }
    const now = deviceNow()
    // A clock that was set back makes nobody wait for longer than a minute.
    const left = Math.min(before.until - now, waitMilliseconds)
    if (left > 0) return Math.ceil(left / 1_000)
    const wrong = before.wrong + 1
    await store.put(triesOf(staffId), { wrong, until: wrong >= freeTries ? now + waitMilliseconds : 0 })
    return 0
  }

  return {
    keep: async ({ staffId, version }, pin, beside) => {
      if (!canMakeKeys()) return
      const mac = await crypto.subtle.sign('HMAC', await ownKey(), textOf(staffId, pin))
      const value: KeptPin = { mac, version, beside: await vault.seal(beside) }
      await store.put(pinOf(staffId), value)
      await store.drop(triesOf(staffId))
    },
    check: async (staffId, pin) => {
      const one = await known(staffId)
      if (one === undefined || !(await vault.isOpen())) return { is: 'unknown' }
      const seconds = await takeTry(staffId)
      if (seconds > 0) return { is: 'blocked', seconds }
      if (!(await crypto.subtle.verify('HMAC', await ownKey(), one.mac, textOf(staffId, pin))))
        return { is: 'wrong' }
      await store.drop(triesOf(staffId))
      return { is: 'right', version: one.version, beside: await vault.open(one.beside) }
    },
    knows: async (staffId) => (await known(staffId)) !== undefined,
    everyone: async () => {
      const names = (await store.names()).filter((name) => name.startsWith(pinOf('')))
      const pins = (await Promise.all(names.map((name) => store.get(name)))) as KeptPin[]
      return Promise.all(pins.map(({ beside }) => vault.open(beside)))
    },
    keepOnly: async (pins) => {
      const versions = new Map(pins.map(({ staffId, version }) => [pinOf(staffId), version]))
      for (const name of await store.names()) {
        if (!name.startsWith(pinOf(''))) continue
        const { version } = (await store.get(name)) as KeptPin
        if (versions.get(name) !== version) await store.drop(name)
      }
    },
  }
}

const textOf = (staffId: string, pin: string) => new TextEncoder().encode(`${staffId} ${pin}`)

/** The PINs that this tablet can check by itself. */
export const tabletPins = makePinChecks(indexedDbKeys, tabletVault, Date.now)
