import { describe, expect, it } from 'vitest'
import { openBox, sealBox } from './sealed-box.ts'

const { subtle } = globalThis.crypto
const keys = () => subtle.generateKey({ name: 'ECDH', namedCurve: 'P-256' }, true, ['deriveBits'])
const exported = async (key: CryptoKey) => Buffer.from(await subtle.exportKey('spki', key)).toString('base64')

const text = JSON.stringify({ says: 'left front gauge', psi: 27.5, name: 'Zoë' })

describe('a sealed box', () => {
  it('is opened by the key that it was sealed to, and reads as it was written', async () => {
    const server = await keys()
    const box = await sealBox(await exported(server.publicKey), text)
    expect(await openBox(server.privateKey, box)).toBe(text)
  })

  it('shows nothing of what it holds, and never looks the same twice', async () => {
    const publicKey = await exported((await keys()).publicKey)
    const box = await sealBox(publicKey, text)
    expect(Buffer.from(box, 'base64').toString('latin1')).not.toContain('gauge')
    expect(await sealBox(publicKey, text)).not.toBe(box)
  })

  it('stays shut for another key, when a bit was changed, and when it is no box', async () => {
    const server = await keys()
    const box = await sealBox(await exported(server.publicKey), text)
    expect(await openBox((await keys()).privateKey, box)).toBeNull()
    const bytes = Buffer.from(box, 'base64')
    for (const at of [3, 70, 90, bytes.length - 1]) {
      const changed = Buffer.from(bytes)
      changed[at] = (changed[at] ?? 0) ^ 1
      expect(await openBox(server.privateKey, changed.toString('base64'))).toBeNull()
    }
    for (const none of ['', 'AAAA', '***', box.slice(0, 90)])
      expect(await openBox(server.privateKey, none)).toBeNull()
  })
})
