import { createPrivateKey, X509Certificate } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { createSigningIdentity } from './signing-key.ts'

const make = (change: Partial<Parameters<typeof createSigningIdentity>[0]> = {}) =>
  createSigningIdentity({
    commonName: 'Tamber Street Tire & Wheel',
    notBefore: '2026-01-12T11:40:00.000Z',
    days: 3_650,
    ...change,
  })

describe('a signing identity', () => {
  // OpenSSL, through node:crypto, reads what was built without it.
  it('is read by OpenSSL as a self-signed EC P-256 certificate with its own key', async () => {
    const { certificatePem, privateKeyPem } = await make()
    const certificate = new X509Certificate(certificatePem)
    const key = createPrivateKey(privateKeyPem)
    expect(certificate.subject).toBe('CN=Tamber Street Tire & Wheel')
    expect(certificate.issuer).toBe(certificate.subject)
    expect(certificate.ca).toBe(false)
    expect(certificate.checkPrivateKey(key)).toBe(true)
    expect(certificate.verify(certificate.publicKey)).toBe(true)
    expect(certificate.publicKey.asymmetricKeyDetails?.namedCurve).toBe('prime256v1')
    expect(certificate.validFromDate.toISOString()).toBe('2026-01-12T11:40:00.000Z')
    expect(certificate.validToDate.toISOString()).toBe('2036-01-10T11:40:00.000Z')
  })

  it('may end after 2049, where dates are written with four digits of the year', async () => {
    const { certificatePem } = await make({ days: 9_000 })
    expect(new X509Certificate(certificatePem).validToDate.toISOString()).toBe('2050-09-03T11:40:00.000Z')
  })

  it('is another one each time', async () => {
    const [one, other] = [await make(), await make()]
    expect(new X509Certificate(one.certificatePem).serialNumber).not.toBe(
      new X509Certificate(other.certificatePem).serialNumber,
    )
  })

  it('refuses names, days and dates that no certificate can carry', async () => {
    await expect(make({ commonName: '' })).rejects.toThrow('1 to 64 characters')
    await expect(make({ commonName: 'x'.repeat(65) })).rejects.toThrow('1 to 64 characters')
    await expect(make({ days: 0 })).rejects.toThrow('1 to 9,000 whole days')
    await expect(make({ days: 1.5 })).rejects.toThrow('1 to 9,000 whole days')
    await expect(make({ notBefore: 'soon' })).rejects.toThrow('UTC instant')
  })
})
