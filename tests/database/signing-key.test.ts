import { randomUUID } from 'node:crypto'
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fingerprintOf } from '@bayledger/report/signing-fault'
import { createSigningIdentity } from '@bayledger/report/signing-key'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { keptSigning } from '../../apps/api/src/signing/kept-signing.ts'
import { rotateSigningKey } from '../../apps/api/src/signing/rotate-signing-key.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'
import { runOutsideTool } from '../support/run-outside-tool.ts'

type Sealed = { readonly number: string; readonly file: string; readonly bytes: Buffer }

/** The key that seals: lost, foreign, past its days, another server's, and changed on purpose, beside a report that it sealed. */
let shop: TestApp
let desk: Caller
let data: string
let orderId: string
let sealed: Sealed
let kept: { readonly certificate: string; readonly key: string }
const certificate = () => join(data, 'signing/certificate.pem')
const key = () => join(data, 'signing/private-key.pem')
const place = (dataFolder = data) => ({
  signing: null,
  dataFolder,
  pool: shop.parts.pool,
  clock: shop.clock,
  daysBefore: 1,
})

beforeAll(async () => {
  data = mkdtempSync(join(tmpdir(), 'bayledger-signing-'))
  shop = await startTestApp(undefined, undefined, (parts) =>
    keptSigning({ signing: null, dataFolder: data, daysBefore: 1, ...parts }),
  )
  const replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
  const order = freshCopy(shop.demo, 'T-2601')
  orderId = order.orderId
  await replay.sendUntil(order.lines)
  sealed = await seal()
  kept = { certificate: readFileSync(certificate(), 'utf8'), key: readFileSync(key(), 'utf8') }
})
beforeEach(() => {
  writeFileSync(certificate(), kept.certificate)
  writeFileSync(key(), kept.key)
})
afterAll(async () => {
  await shop.stop()
  rmSync(data, { recursive: true, force: true })
})

/** Seals one more report of the order. */
const seal = async (): Promise<Sealed> => {
  const { body } = await desk.post(`/api/orders/${orderId}/reports`, { entryId: randomUUID() }).expect(201)
  const reply = await desk.get(`/api/orders/${orderId}/reports/${body.number}`).responseType('blob')
  const file = join(data, `${body.number}.pdf`)
  writeFileSync(file, reply.body)
  return { number: body.number, file, bytes: reply.body }
}

/** Whether the signature in a file brings this certificate along. */
const isSignedWith = ({ bytes }: Sealed, certificatePem: string): boolean => {
  const der = Buffer.from(certificatePem.replace(/-----[^-]+-----|\s/g, ''), 'base64').toString('hex')
  return bytes.toString('latin1').toLowerCase().includes(der)
}

const checked = async ({ bytes }: Sealed = sealed) =>
  (await shop.nobody.call('post', '/api/report-checks', { 'content-type': 'application/pdf' }).send(bytes))
    .body.verdict
const keysOf = async () => (await shop.nobody.get('/api/signing-keys').expect(200)).body.shops[0].keys

describe('the key that seals', () => {
  it('is made once for its owner alone, printed on the report, and published', async () => {
    const fingerprint = fingerprintOf(kept.certificate)
    expect(await keysOf()).toMatchObject([{ fingerprint }])
    const printed = runOutsideTool('pdftotext', [sealed.file, '-']).output.replace(/\s/g, '')
    expect(printed).toContain(fingerprint)
    expect(runOutsideTool('pdfsig', [sealed.file]).output).toContain('Signature is Valid.')
    for (const file of [certificate(), key()]) expect(statSync(file).mode & 0o077).toBe(0)
    await shop.nobody.get('/readyz').expect(200)
  })

  it.each([
    ['a missing certificate', () => rmSync(certificate()), 'certificate.pem is missing'],
    ['a missing key', () => rmSync(key()), 'private-key.pem is missing'],
    ['a certificate that is none', () => writeFileSync(certificate(), 'x'), 'certificate cannot be read'],
    ['a key that is none', () => writeFileSync(key(), 'x'), 'private key cannot be read'],
    [
      'both gone',
      () => {
        rmSync(certificate())
        rmSync(key())
      },
      'its key is missing',
    ],
  ])(
    'is not replaced for %s: it is said, nothing is sealed, and the service is not ready',
    async (_what, spoil, words) => {
      spoil()
      const before = readdirSync(join(data, 'signing'))
      expect((await shop.parts.signing.signingTroubles()).join()).toContain(words)
      const { body } = await shop.nobody.get('/readyz').expect(503)
      expect(body.detail).toContain('key that seals')
      await expect(shop.parts.signing.signingOf(shop.demo.shop.id)).rejects.toMatchObject({
        code: 'SERVICE_UNAVAILABLE',
      })
      expect(readdirSync(join(data, 'signing'))).toEqual(before)
      expect(await checked()).toBe('genuine')
    },
  )

  it('is told from a stranger’s of the same name, and from one that is past its days', async () => {
    const stranger = await createSigningIdentity({
      commonName: shop.demo.shop.name,
      notBefore: '2026-01-01T00:00:00.000Z',
      days: 30,
    })
    writeFileSync(key(), stranger.privateKeyPem)
    expect((await shop.parts.signing.signingTroubles()).join()).toContain('belongs to another certificate')
    writeFileSync(certificate(), stranger.certificatePem)
    expect((await shop.parts.signing.signingTroubles()).join()).toContain('holds another key')
    const old = await createSigningIdentity({
      commonName: shop.demo.shop.name,
      notBefore: '2025-01-01T00:00:00.000Z',
      days: 300,
    })
    writeFileSync(certificate(), old.certificatePem)
    writeFileSync(key(), old.privateKeyPem)
    expect((await shop.parts.signing.signingTroubles()).join()).toContain('from 2025-01-01 to 2025-10-28')
  })

  it('is shared by several servers on purpose: one without it makes none of its own', async () => {
    const elsewhere = mkdtempSync(join(tmpdir(), 'bayledger-signing-'))
    const other = keptSigning(place(elsewhere))
    expect((await other.signingTroubles()).join()).toContain(
      'copy them from the server that has sealed so far',
    )
    await expect(other.signingOf(shop.demo.shop.id)).rejects.toMatchObject({ code: 'SERVICE_UNAVAILABLE' })
    expect(readdirSync(elsewhere)).toEqual([])
    rmSync(elsewhere, { recursive: true })
  })

  it('is changed on purpose only: the running service seals with the new one, and earlier reports stay genuine', async () => {
    await expect(rotateSigningKey(place(), 'No such shop')).rejects.toThrow('Name the shop')
    const rotated = await rotateSigningKey(place(), undefined)
    const now = await shop.parts.signing.signingOf(shop.demo.shop.id)
    expect(fingerprintOf(now.certificatePem)).toBe(rotated.fingerprint)
    expect(await keysOf()).toMatchObject([
      { fingerprint: rotated.fingerprint },
      { fingerprint: fingerprintOf(kept.certificate) },
    ])
    expect(readFileSync(join(rotated.keptIn ?? '', 'certificate.pem'), 'utf8')).toBe(kept.certificate)
    expect(await checked()).toBe('genuine')
    expect(runOutsideTool('pdfsig', [sealed.file]).output).toContain('Signature is Valid.')
    const next = await seal()
    expect([isSignedWith(sealed, kept.certificate), isSignedWith(next, kept.certificate)]).toEqual([
      true,
      false,
    ])
    expect(isSignedWith(next, now.certificatePem)).toBe(true)
    const printed = runOutsideTool('pdftotext', [next.file, '-']).output.replace(/\s/g, '')
    expect(printed).toContain(rotated.fingerprint)
    expect(runOutsideTool('pdfsig', [next.file]).output).toContain('Signature is Valid.')
    expect([await checked(next), await checked()]).toEqual(['genuine', 'genuine'])
    // The one of before is no longer the shop's.
    writeFileSync(certificate(), kept.certificate)
    writeFileSync(key(), kept.key)
    expect((await shop.parts.signing.signingTroubles()).join()).toContain('holds an earlier key')
  })
})
