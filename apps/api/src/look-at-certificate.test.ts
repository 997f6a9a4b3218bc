import { describe, expect, it } from 'vitest'
import { makeAuthority, makeHostCertificate } from './host-certificate.ts'
import { lookAtCertificate } from './look-at-certificate.ts'

const made = new Date('2026-01-12T12:00:00Z')
const after = (days: number) => new Date(made.getTime() + days * 86_400_000)

describe('the look at the certificate of the service', async () => {
  const authority = await makeAuthority('An authority', made, ['desk.shop.lan'])
  const host = await makeHostCertificate(authority, ['desk.shop.lan'], made)
  const tls = { cert: host.certificatePem, key: host.privateKeyPem }

  it('has nothing to say until its last month, and then says the day', () => {
    expect(lookAtCertificate(tls, after(365))).toBeNull()
    expect(lookAtCertificate(tls, after(367))).toMatch(/ends on 2027-02-12\. .*with the same names before/)
    expect(lookAtCertificate(tls, after(398))).toMatch(/ended on 2027-02-12: tablets and browsers refuse it/)
  })

  it('refuses a key of another certificate, and what is none, in words', () => {
    expect(() => lookAtCertificate({ ...tls, key: authority.privateKeyPem }, made)).toThrow(/belong together/)
    expect(() => lookAtCertificate({ ...tls, key: 'none' }, made)).toThrow(/TLS_KEY .* no private key/)
    expect(() => lookAtCertificate({ ...tls, cert: 'none' }, made)).toThrow(/TLS_CERT .* no certificate/)
  })
})
