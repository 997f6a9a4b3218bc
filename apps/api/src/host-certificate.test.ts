import { X509Certificate } from 'node:crypto'
import { once } from 'node:events'
import { createServer, request } from 'node:https'
import type { AddressInfo } from 'node:net'
import { describe, expect, it } from 'vitest'
import { makeAuthority, makeHostCertificate, mayVouchFor } from './host-certificate.ts'

const now = new Date('2026-01-12T16:40:00.000Z')

describe('a certificate for the shop’s host', () => {
  it('is signed by the shop’s own authority, for the names it was asked for, for 397 days', async () => {
    const authority = await makeAuthority('Test authority', now)
    const host = await makeHostCertificate(authority, ['desk.shop.lan', '192.168.1.20'], now)
    // Read by Node's OpenSSL: a source outside this code.
    const read = new X509Certificate(host.certificatePem)
    const root = new X509Certificate(authority.certificatePem)
    expect(read.verify(root.publicKey)).toBe(true)
    expect(read.checkIssued(root)).toBe(true)
    expect(root.ca).toBe(true)
    expect(read.ca).toBe(false)
    expect(read.checkHost('desk.shop.lan')).toBe('desk.shop.lan')
    expect(read.checkIP('192.168.1.20')).toBe('192.168.1.20')
    expect(read.checkHost('elsewhere.lan')).toBeUndefined()
    expect((read.validToDate.getTime() - read.validFromDate.getTime()) / 86_400_000).toBe(397)
  })

  it('lets a client in that trusts the authority, and no other', async () => {
    const today = new Date()
    const authority = await makeAuthority('Test authority', today)
    const host = await makeHostCertificate(authority, ['localhost', '127.0.0.1'], today)
    const server = createServer(
      { cert: host.certificatePem, key: host.privateKeyPem },
      (_request, response) => response.end('in'),
    ).listen(0, '127.0.0.1')
    await once(server, 'listening')
    const { port } = server.address() as AddressInfo
    const get = (ca?: string) =>
      new Promise<number | undefined>((resolve, reject) => {
        request({ host: '127.0.0.1', port, ...(ca ? { ca } : {}) }, (response) => {
          response.resume()
          resolve(response.statusCode)
        })
          .on('error', reject)
          .end()
      })
    expect(await get(authority.certificatePem)).toBe(200)
    await expect(get()).rejects.toThrow(/certificate/)
    server.close()
  })

  it('may be for local names and those that it was made for, and for no other: OpenSSL refuses the rest', async () => {
    const today = new Date()
    const authority = await makeAuthority('Test authority', today, ['desk.shop.example', '203.0.113.7'])
    expect(
      [
        'desk.shop.example',
        'a.lan',
        '192.168.1.20',
        '203.0.113.7',
        'bank.example',
        '203.0.113.8',
        'notlan',
      ].map((host) => mayVouchFor(authority, host)),
    ).toEqual(['yes', 'yes', 'yes', 'yes', 'no', 'no', 'no'])
    const statusFor = async (host: string) => {
      const { certificatePem, privateKeyPem } = await makeHostCertificate(authority, [host], today)
      const server = createServer({ cert: certificatePem, key: privateKeyPem }, (_request, response) =>
        response.end('in'),
      ).listen(0, '127.0.0.1')
      await once(server, 'listening')
      const { port } = server.address() as AddressInfo
      const status = await new Promise<number | string | undefined>((resolve) => {
        request({ host: '127.0.0.1', port, servername: host, ca: authority.certificatePem }, (response) => {
          response.resume()
          resolve(response.statusCode)
        })
          .on('error', (error: Error) => resolve(error.message))
          .end()
      })
      server.close()
      return status
    }
    expect(await statusFor('desk.shop.example')).toBe(200)
    expect(await statusFor('bank.example')).toMatch(/permitted subtree violation/)
  })
})
