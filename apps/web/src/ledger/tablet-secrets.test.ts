import { webcrypto } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import type { KeyStore } from './key-store.ts'
import { makePinChecks } from './pin-checks.ts'
import { makeTabletKey } from './tablet-key.ts'
import { makeVault, VaultShut } from './vault.ts'

const hour = 3_600_000
const server = Date.parse('2026-01-12T16:40:00.000Z')

/** What lies on the tablet's disk, through reloads. */
const disk = (): KeyStore & { readonly rows: Map<string, unknown> } => {
  const rows = new Map<string, unknown>()
  return {
    rows,
    get: async (name) => rows.get(name),
    getAll: async (names) => names.map((name) => rows.get(name)),
    put: async (name, value) => void rows.set(name, value),
    drop: async (name) => void rows.delete(name),
    names: async () => [...rows.keys()],
  }
}

const tablet = async (kept = disk()) => {
  let device = 0
  const clock = () => device
  const vault = makeVault(kept, clock)
  await vault.contactMade({ serverAt: server, hours: 72 })
  return {
    kept,
    vault,
    pins: makePinChecks(kept, vault, clock),
    /** After a reload. */
    again: () => makePinChecks(kept, makeVault(kept, clock), clock),
    wait: (milliseconds: number) => {
      device += milliseconds
    },
    hear: (serverAt: number) => vault.contactMade({ serverAt, hours: 72 }),
  }
}

const content = { vehicle: 'HRV 4417', readings: [27.5, 31], words: 'Zoë’s car' }

describe('the vault of a tablet', () => {
  it('gives back what was kept, and keeps nothing that can be read', async () => {
    const { vault } = await tablet()
    const kept = await vault.seal(content)
    expect(await vault.open(kept)).toEqual(content)
    if (kept.is !== 'sealed') throw new Error('it was not sealed')
    expect(Buffer.from(kept.bytes).toString('latin1')).not.toContain('HRV')
  })

  it('keeps bytes as well', async () => {
    const { vault } = await tablet()
    const bytes = webcrypto.getRandomValues(new Uint8Array(2_000)).buffer
    expect(new Uint8Array(await vault.openBytes(await vault.sealBytes(bytes)))).toEqual(new Uint8Array(bytes))
  })

  it('has a key that cannot be read out of the browser', async () => {
    const { kept } = await tablet()
    await expect(crypto.subtle.exportKey('raw', kept.rows.get('vault') as CryptoKey)).rejects.toThrow()
  })

  it('opens nothing once it is shut, and nothing of before when it has a new key', async () => {
    const { vault, hear } = await tablet()
    const kept = await vault.seal(content)
    await vault.shut()
    await expect(vault.open(kept)).rejects.toThrow(VaultShut)
    await expect(vault.seal(content)).rejects.toThrow(VaultShut)
    expect(await hear(server + hour)).toBe(true)
    await expect(vault.open(kept)).rejects.toThrow(VaultShut)
    expect(await vault.open(await vault.seal(content))).toEqual(content)
  })

  it('shuts by itself when the owner’s hours have passed without the server, and not before', async () => {
    const { vault, wait } = await tablet()
    const kept = await vault.seal(content)
    wait(72 * hour)
    expect(await vault.open(kept)).toEqual(content)
    wait(1)
    expect(await vault.isOpen()).toBe(false)
    await expect(vault.open(kept)).rejects.toThrow(VaultShut)
  })

  it('is not kept open by a clock that is set back', async () => {
    const { vault, wait } = await tablet()
    wait(71 * hour)
    expect(await vault.isOpen()).toBe(true)
    wait(-70 * hour)
    expect(await vault.isOpen()).toBe(true)
    wait(2 * hour)
    expect(await vault.isOpen()).toBe(false)
  })

  it('knows the server’s time without the server', async () => {
    const { vault, wait } = await tablet()
    wait(5 * hour)
    expect(await vault.timeNow()).toBe(server + 5 * hour)
  })

  it('cannot be opened before the server knew the tablet', async () => {
    const vault = makeVault(disk(), () => 0)
    await expect(vault.seal(content)).rejects.toThrow(VaultShut)
    expect(await vault.timeNow()).toBeNull()
  })
})

const ines = { staffId: 'ines', version: 3 }

describe('a PIN that the tablet checks itself', () => {
  it('is right or wrong for the person who typed it with the server before', async () => {
    const { pins } = await tablet()
    await pins.keep(ines, '246813', { name: 'Ines' })
    expect(await pins.check('ines', '246813')).toEqual({ is: 'right', version: 3, beside: { name: 'Ines' } })
    expect(await pins.check('ines', '246814')).toEqual({ is: 'wrong' })
    expect(await pins.check('greta', '246813')).toEqual({ is: 'unknown' })
    expect(await pins.everyone()).toEqual([{ name: 'Ines' }])
  })

  it('is not kept in a form that can be read', async () => {
    const { pins, kept } = await tablet()
    await pins.keep(ines, '246813', { name: 'Ines Odell' })
    const { mac, beside } = kept.rows.get('pin/ines') as { mac: ArrayBuffer; beside: { bytes: ArrayBuffer } }
    const text = Buffer.concat([Buffer.from(mac), Buffer.from(beside.bytes)]).toString('latin1')
    expect(text).not.toMatch(/246813|Odell/)
    await expect(crypto.subtle.exportKey('raw', kept.rows.get('pin-key') as CryptoKey)).rejects.toThrow()
  })

  it('has five tries, then a wait of a minute, also after a reload', async () => {
    const { pins, again, wait } = await tablet()
    await pins.keep(ines, '246813', null)
    for (let tries = 0; tries < 5; tries += 1)
      expect(await pins.check('ines', '000000')).toEqual({ is: 'wrong' })
    expect(await pins.check('ines', '246813')).toEqual({ is: 'blocked', seconds: 60 })
    wait(20_000)
    expect(await again().check('ines', '246813')).toEqual({ is: 'blocked', seconds: 40 })
    wait(40_000)
    expect((await again().check('ines', '246813')).is).toBe('right')
    expect(await pins.check('ines', '000000')).toEqual({ is: 'wrong' })
  })

  it('waits a minute after each further wrong one', async () => {
    const { pins, wait } = await tablet()
    await pins.keep(ines, '246813', null)
    for (let tries = 0; tries < 5; tries += 1) await pins.check('ines', '000000')
    wait(60_000)
    expect(await pins.check('ines', '000001')).toEqual({ is: 'wrong' })
    expect(await pins.check('ines', '246813')).toEqual({ is: 'blocked', seconds: 60 })
  })

  it('is forgotten when the person left or has another PIN', async () => {
    const { pins } = await tablet()
    await pins.keep(ines, '246813', null)
    await pins.keep({ staffId: 'bo', version: 1 }, '135790', null)
    await pins.keepOnly([ines, { staffId: 'bo', version: 2 }])
    expect((await pins.check('ines', '246813')).is).toBe('right')
    expect(await pins.check('bo', '135790')).toEqual({ is: 'unknown' })
    await pins.keepOnly([])
    expect(await pins.knows('ines')).toBe(false)
  })

  it('is not checked once the tablet has been out of reach for too long', async () => {
    const { pins, wait } = await tablet()
    await pins.keep(ines, '246813', null)
    wait(73 * hour)
    expect(await pins.check('ines', '246813')).toEqual({ is: 'unknown' })
  })
})

describe('the key of a tablet', () => {
  const verified = async (publicKey: string, text: string, signature: string) =>
    crypto.subtle.verify(
      { name: 'ECDSA', hash: 'SHA-256' },
      await crypto.subtle.importKey(
        'spki',
        Buffer.from(publicKey, 'base64'),
        { name: 'ECDSA', namedCurve: 'P-256' },
        true,
        ['verify'],
      ),
      Buffer.from(signature, 'base64url'),
      new TextEncoder().encode(text),
    )

  it('is prepared before the enrollment is asked for, and signs after it', async () => {
    const kept = disk()
    const key = makeTabletKey(kept)
    const publicKey = (await key.prepare()) ?? ''
    expect(publicKey).toMatch(/^[A-Za-z0-9+/]{122}==$/)
    expect(await key.sign('tablet-1', 'text')).toBeNull()
    await makeTabletKey(kept).adopt('tablet-1')
    const signature = (await key.sign('tablet-1', 'text')) ?? ''
    expect(signature).toMatch(/^[A-Za-z0-9_-]{86}$/)
    expect(await verified(publicKey, 'text', signature)).toBe(true)
    expect(await verified(publicKey, 'another', signature)).toBe(false)
    expect(await key.publicKeyOf('tablet-1')).toBe(publicKey)
  })

  it('stays with an enrollment when another one is tried in vain', async () => {
    const kept = disk()
    const key = makeTabletKey(kept)
    const publicKey = await key.prepare()
    await key.adopt('tablet-1')
    await key.prepare()
    await key.adopt('tablet-1')
    expect(await key.publicKeyOf('tablet-1')).toBe(publicKey)
    await key.adopt('tablet-2')
    expect(await key.publicKeyOf('tablet-2')).not.toBe(publicKey)
    expect(await key.sign('tablet-1', 'text')).toBeNull()
  })

  it('is made later by a tablet that was enrolled without one', async () => {
    const key = makeTabletKey(disk())
    await key.adopt('tablet-1')
    expect(await key.sign('tablet-1', 'text')).toBeNull()
    const publicKey = await key.publicKeyOf('tablet-1')
    expect(await key.publicKeyOf('tablet-1')).toBe(publicKey)
    expect(await key.sign('tablet-1', 'text')).not.toBeNull()
  })

  it('has a private half that cannot be read out of the browser', async () => {
    const kept = disk()
    const key = makeTabletKey(kept)
    await key.publicKeyOf('tablet-1')
    const { pair } = kept.rows.get('signing') as { pair: CryptoKeyPair }
    await expect(crypto.subtle.exportKey('pkcs8', pair.privateKey)).rejects.toThrow()
  })
})
