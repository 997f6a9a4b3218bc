import { generateKeyPairSync } from 'node:crypto'
import { beforeAll, describe, expect, it } from 'vitest'
import { runOutsideTool } from '../../../tests/support/run-outside-tool.ts'
import { finishedOrder } from '../test-support/finished-order.ts'
import { withFile } from '../test-support/temporary-file.ts'
import { drawReport } from './drawing/draw-report.ts'
import { SealError, type SealOptions, sealReport } from './seal.ts'
import { createSigningIdentity } from './signing-key.ts'

const signedAt = '2026-01-12T14:52:00.000Z'
let unsealed: Uint8Array
let sealed: Uint8Array
let options: SealOptions

beforeAll(async () => {
  const identity = await createSigningIdentity({
    commonName: 'Tamber Street Tire & Wheel',
    notBefore: '2026-01-01T00:00:00.000Z',
    days: 3_650,
  })
  options = {
    certificate: identity.certificatePem,
    privateKey: identity.privateKeyPem,
    reason: 'Report R-2601-1',
    signedAt,
  }
  unsealed = await drawReport(finishedOrder)
  sealed = await sealReport(unsealed, options)
})

/** What pdfsig (poppler) says; a reader that shares no code with what sealed the file. */
const verdict = (bytes: Uint8Array): string =>
  withFile(bytes, (path) => runOutsideTool('pdfsig', [path]).output)

const isGenuine = (said: string): boolean =>
  said.includes('Signature is Valid.') &&
  said.includes('Total document signed') &&
  !said.includes('Not total document signed')

describe('a sealed report', () => {
  it('is valid and wholly signed for pdfsig', () => {
    const said = verdict(sealed)
    expect(isGenuine(said)).toBe(true)
    expect(said).toContain('ETSI.CAdES.detached')
    expect(said).toContain('Signer Certificate Common Name: Tamber Street Tire & Wheel')
    expect(said).toContain('Signing Hash Algorithm: SHA-256')
    expect(said).toContain('Signing Time: Jan 12 2026 14:52:00')
  })

  it('is well formed for qpdf', () => {
    const checked = withFile(sealed, (path) => runOutsideTool('qpdf', ['--check', path]))
    expect(checked.output).toContain('No syntax or stream encoding errors found')
    expect(checked.status).toBe(0)
  })

  it('keeps every byte that was drawn', () => {
    expect(Buffer.from(sealed.subarray(0, unsealed.length)).equals(Buffer.from(unsealed))).toBe(true)
  })

  it('is no longer genuine when any one bit of what is signed is changed', () => {
    const [hole, end] = signatureHole(sealed)
    const signed = sealed.length - (end - hole)
    for (let trial = 0; trial < 60; trial += 1) {
      // Spread by a fixed stride that shares no factor with the length of the trials.
      const place = Math.floor((trial * signed) / 60) + (trial % 7)
      const at = place < hole ? place : place + (end - hole)
      const changed = Buffer.from(sealed)
      changed[at] = (changed[at] ?? 0) ^ (1 << (trial % 8))
      expect(isGenuine(verdict(changed)), `bit ${trial % 8} of byte ${at}`).toBe(false)
    }
  })

  // Some bytes of the signature's envelope are covered by nothing (they say nothing about the document); the
  // shop's register compares the SHA-256 of the whole file and so covers these as well.
  it('is no longer genuine when the signature value is changed', () => {
    const [hole, end] = signatureHole(sealed)
    const digits = Buffer.from(sealed.subarray(hole + 1, end - 1)).toString('latin1')
    const last = hole + digits.trimEnd().replace(/0+$/, '').length
    for (const back of [8, 20, 40, 60]) {
      const changed = Buffer.from(sealed)
      changed.write(String.fromCharCode(changed[last - back] ?? 0) === '0' ? '1' : '0', last - back)
      expect(isGenuine(verdict(changed)), `digit ${back} from the end of the signature`).toBe(false)
    }
  })

  it('is no longer wholly signed when bytes are appended', () => {
    expect(isGenuine(verdict(Buffer.concat([sealed, Buffer.from('\n% more\n')])))).toBe(false)
  })

  it('is unsigned before sealing, for pdfsig too', () => {
    expect(verdict(unsealed)).toContain('does not contain any signatures')
  })
})

describe('sealing refuses', () => {
  const refusal = async (change: Partial<SealOptions>): Promise<string> => {
    const failed = await sealReport(unsealed, { ...options, ...change }).catch((error: unknown) => error)
    expect(failed).toBeInstanceOf(SealError)
    return failed instanceof Error ? failed.message : ''
  }

  it('a key that is not the certificate’s own', async () => {
    const other = await createSigningIdentity({
      commonName: 'Other',
      notBefore: '2026-01-01T00:00:00.000Z',
      days: 10,
    })
    expect(await refusal({ privateKey: other.privateKeyPem })).toContain('not the certificate’s own')
  })

  it('a day on which the certificate is not valid', async () => {
    expect(await refusal({ signedAt: '2025-12-31T23:59:59.000Z' })).toContain('is valid from')
    expect(await refusal({ signedAt: '2046-01-12T14:52:00.000Z' })).toContain('is valid from')
  })

  it('an RSA key', async () => {
    const { privateKey } = generateKeyPairSync('rsa', { modulusLength: 2048 })
    const pem = privateKey.export({ format: 'pem', type: 'pkcs8' }).toString()
    expect(await refusal({ privateKey: pem })).toContain('not EC P-256')
  })

  it('text that is neither a certificate nor a key', async () => {
    expect(await refusal({ certificate: 'nothing' })).toContain('holds no certificate')
    expect(await refusal({ privateKey: 'nothing' })).toContain('cannot be read')
  })
})

/** The place of the hexadecimal signature: the one part of the file that it cannot cover. */
const signatureHole = (bytes: Uint8Array): [number, number] => {
  const text = Buffer.from(bytes).toString('latin1')
  const match = /\/ByteRange\s*\[\s*0\s+(\d+)\s+(\d+)/.exec(text)
  if (!match) throw new Error('there is no signature in the file')
  return [Number(match[1]), Number(match[2])]
}
