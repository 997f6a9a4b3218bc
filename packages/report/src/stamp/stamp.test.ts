import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { runOutsideTool } from '../../../../tests/support/run-outside-tool.ts'
import {
  type Manner,
  type StampAuthority,
  startStampAuthority,
} from '../../../../tests/support/stamp-authority.ts'
import { finishedOrder } from '../../test-support/finished-order.ts'
import { drawReport } from '../drawing/draw-report.ts'
import { sealReport } from '../seal.ts'
import { createSigningIdentity } from '../signing-key.ts'
import { judgeStamp, rootsOf } from './judge-stamp.ts'
import { signatureValueOf, stampIn, withStamp } from './stamp-in-file.ts'
import { makeStampRequest, readStampReply, type StampReply } from './stamp-request.ts'

/**
 * Sources: RFC 3161 and RFC 5816 (what a request and a token are), ETSI EN 319 142-1 (the attribute in the signature). `openssl ts`
 * makes and verifies the stamps here, and `pdfsig` reads the file; neither shares code with what is tested.
 */
let authority: StampAuthority
let sealed: Uint8Array
beforeAll(async () => {
  authority = await startStampAuthority()
  const identity = await createSigningIdentity({
    commonName: 'Tamber Street Tire & Wheel',
    notBefore: '2026-01-01T00:00:00.000Z',
    days: 30,
  })
  sealed = await sealReport(await drawReport(finishedOrder), {
    certificate: identity.certificatePem,
    privateKey: identity.privateKeyPem,
    reason: 'Report R-2601-1',
    signedAt: '2026-01-12T14:52:00.000Z',
    roomForStamp: true,
  })
})
afterAll(() => authority.stop())

const ask = async (bytes: Uint8Array, manner: Manner = 'as-it-should'): Promise<StampReply> => {
  authority.answer(manner)
  const request = makeStampRequest(bytes)
  const reply = await fetch(authority.address, { method: 'POST', body: Uint8Array.from(request.der) })
  return readStampReply(new Uint8Array(await reply.arrayBuffer()), request)
}
const tokenFor = async (bytes: Uint8Array, manner?: Manner): Promise<Uint8Array> => {
  const reply = await ask(bytes, manner)
  if (reply.is !== 'token') throw new Error(`no token: ${JSON.stringify(reply)}`)
  return reply.token
}
const opensslSays = (token: Uint8Array, bytes: Uint8Array): string => {
  writeFileSync(join(authority.folder, 'token'), token)
  writeFileSync(join(authority.folder, 'data'), bytes)
  return runOutsideTool('openssl', [
    ...['ts', '-verify', '-token_in', '-in', join(authority.folder, 'token')],
    ...['-data', join(authority.folder, 'data'), '-CAfile', authority.rootFile],
  ]).output
}
const bytes = Buffer.from('a file of any kind')

describe('a request for a time-stamp', () => {
  it('is one that OpenSSL reads: SHA-256, a number of its own, and the certificate wished for', () => {
    const file = join(authority.folder, 'request')
    const nonces = [1, 2].map(() => {
      writeFileSync(file, makeStampRequest(bytes).der)
      const { output } = runOutsideTool('openssl', ['ts', '-query', '-in', file, '-text'])
      expect(output).toMatch(/Version: 1\nHash Algorithm: sha256\n[\s\S]*Certificate required: yes/)
      return /Nonce: (0x[\dA-F]+)/.exec(output)?.[1]
    })
    expect(new Set(nonces).size).toBe(2)
  })
})

describe('a time-stamp', () => {
  it('of a file is judged as OpenSSL judges it, by root, time and authority', async () => {
    const token = await tokenFor(bytes)
    const verdict = await judgeStamp(token, bytes, rootsOf(authority.root))
    expect(verdict).toMatchObject({ is: 'good', authority: 'Quillfeather Time' })
    if (verdict.is === 'bad') throw new Error(verdict.why)
    expect(Math.abs(Date.parse(verdict.at) - Date.now())).toBeLessThan(600_000)
    expect(opensslSays(token, bytes)).toContain('Verification: OK')
    expect(await judgeStamp(token, bytes, [])).toEqual({ ...verdict, is: 'unknown-authority' })
    const other = await createSigningIdentity({
      commonName: 'Root of Quillfeather Time',
      notBefore: new Date().toISOString(),
      days: 30,
    })
    expect(await judgeStamp(token, bytes, rootsOf(other.certificatePem))).toMatchObject({
      is: 'unknown-authority',
    })
  })

  it('of other bytes is none of these', async () => {
    const token = await tokenFor(bytes)
    const other = Buffer.from('a file of any kinds')
    expect(await judgeStamp(token, other, rootsOf(authority.root))).toEqual({
      is: 'bad',
      why: 'another-imprint',
    })
    expect(opensslSays(token, other)).toContain('FAILED')
  })

  it('is good with no bit of its text or its signature changed', async () => {
    const token = await tokenFor(bytes)
    const roots = rootsOf(authority.root)
    const at = (marker: Buffer, from = 0) => Buffer.from(token).indexOf(marker, from)
    // The policy and the time lie in the text; the signature's value is last.
    const places = [
      at(Buffer.from([0x06, 0x04, 0x2a, 0x03, 0x04, 0x01])) + 5,
      at(Buffer.from([0x18, 0x0f])) + 15,
      token.length - 4,
    ]
    for (const place of places) {
      const changed = Uint8Array.from(token)
      changed[place] = (changed[place] ?? 0) ^ 1
      expect(await judgeStamp(changed, bytes, roots), `byte ${place}`).toMatchObject({ is: 'bad' })
      expect(opensslSays(changed, bytes), `byte ${place}`).not.toContain('Verification: OK')
    }
  })

  it('by a certificate that is not for stamps is refused, as OpenSSL does', async () => {
    const token = await tokenFor(bytes, 'no-usage')
    expect(await judgeStamp(token, bytes, rootsOf(authority.root))).toEqual({
      is: 'bad',
      why: 'not-for-stamps',
    })
    expect(opensslSays(token, bytes)).toContain('FAILED')
  })

  it('that the authority refuses, answers wrongly or breaks off is none', async () => {
    expect(await ask(bytes, 'refuses')).toMatchObject({
      is: 'refused',
      said: expect.stringContaining('Bad request'),
    })
    expect(await ask(bytes, 'another-nonce')).toEqual({ is: 'another-nonce' })
    expect(await ask(bytes, 'no-der')).toEqual({ is: 'malformed' })
    expect(await ask(bytes, 'cut-off')).toEqual({ is: 'malformed' })
    const token = await tokenFor(bytes, 'another-imprint')
    expect(await judgeStamp(token, bytes, rootsOf(authority.root))).toEqual({
      is: 'bad',
      why: 'another-imprint',
    })
    for (const junk of [
      new Uint8Array(),
      bytes,
      Buffer.alloc(60_000, 0x30),
      Buffer.from('3080'.repeat(9_000), 'hex'),
    ])
      expect(await judgeStamp(junk, bytes, [])).toEqual({ is: 'bad', why: 'malformed' })
  })
})

describe('a sealed file with a time-stamp', () => {
  it('is valid for pdfsig, holds a stamp over its signature that OpenSSL verifies, and differs nowhere else', async () => {
    const value = signatureValueOf(sealed) ?? new Uint8Array()
    const stamped = withStamp(sealed, await tokenFor(value)) ?? new Uint8Array()
    expect(stamped.length).toBe(sealed.length)
    const file = join(authority.folder, 'stamped.pdf')
    writeFileSync(file, stamped)
    const said = runOutsideTool('pdfsig', [file]).output
    expect(said).toContain('Signature is Valid.')
    expect(said).toMatch(/^ +- Total document signed$/m)
    expect(runOutsideTool('qpdf', ['--check', file]).status).toBe(0)
    expect(Buffer.from(signatureValueOf(stamped) ?? []).equals(value)).toBe(true)
    const token = stampIn(stamped) ?? new Uint8Array()
    expect(opensslSays(token, value)).toContain('Verification: OK')
    expect(await judgeStamp(token, value, rootsOf(authority.root))).toMatchObject({ is: 'good' })
    const [from, to] = holeOf(stamped)
    for (const [start, end] of [
      [0, from],
      [to, stamped.length],
    ])
      expect(Buffer.from(stamped.subarray(start, end)).equals(sealed.subarray(start, end))).toBe(true)
  })

  it('carries the attribute by which readers find it, as OpenSSL prints it', async () => {
    const token = await tokenFor(signatureValueOf(sealed) ?? new Uint8Array())
    const stamped = Buffer.from(withStamp(sealed, token) ?? [])
    const [from, to] = holeOf(stamped)
    const file = join(authority.folder, 'signature')
    writeFileSync(file, Buffer.from(stamped.toString('latin1', from + 1, to - 1), 'hex'))
    const { output } = runOutsideTool('openssl', [
      ...['cms', '-cmsout', '-print', '-inform', 'DER', '-in', file],
    ])
    expect(output).toContain('object: id-smime-aa-timeStampToken (1.2.840.113549.1.9.16.2.14)')
  })

  it('holds none before it is stamped, and takes none where there is no room or no signature', async () => {
    expect(stampIn(sealed)).toBeNull()
    expect(signatureValueOf(Buffer.from('%PDF-1.7'))).toBeNull()
    expect(stampIn(Buffer.concat([sealed, Buffer.from('\n')]))).toBeNull()
    const token = await tokenFor(bytes)
    expect(withStamp(Buffer.from('%PDF-1.7'), token)).toBeNull()
    const large = Buffer.concat([Buffer.from([0x04, 0x82, 0x80, 0x00]), Buffer.alloc(0x8000)])
    expect(withStamp(sealed, large)).toBeNull()
  })
})

/** Where the hexadecimal signature lies: the one part of the file that it cannot cover. */
const holeOf = (pdf: Uint8Array): [number, number] => {
  const range = /\/ByteRange\s*\[\s*0\s+(\d+)\s+(\d+)/.exec(Buffer.from(pdf).toString('latin1'))
  if (range === null) throw new Error('there is no signature in the file')
  return [Number(range[1]), Number(range[2])]
}
