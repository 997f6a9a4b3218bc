import { once } from 'node:events'
import { createServer, type Server } from 'node:https'
import { type AddressInfo, connect as connectPlainly } from 'node:net'
import { type ConnectionOptions, connect } from 'node:tls'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { makeAuthority, makeHostCertificate } from '../host-certificate.ts'
import { tlsWith } from './tls.ts'

let server: Server
let authority: string
beforeAll(async () => {
  const today = new Date()
  const own = await makeAuthority('Test authority', today)
  const host = await makeHostCertificate(own, ['localhost'], today)
  authority = own.certificatePem
  server = createServer(
    tlsWith({ cert: host.certificatePem, key: host.privateKeyPem }),
    (_request, response) => response.end('in'),
  ).listen(0, '127.0.0.1')
  await once(server, 'listening')
})
afterAll(() => server.close())

const port = () => (server.address() as AddressInfo).port

/** The version and suite that a client with these settings gets, or the code of why it gets none. */
const offered = (options: ConnectionOptions): Promise<string> =>
  new Promise((resolve) => {
    const socket = connect(
      { host: '127.0.0.1', port: port(), servername: 'localhost', ca: authority, ...options },
      () => {
        resolve(`${socket.getProtocol()} ${socket.getCipher().standardName}`)
        socket.destroy()
      },
    )
    socket.on('error', (error: Error & { code?: string }) => resolve(error.code ?? error.message))
  })

describe('TLS of the service', () => {
  it('is 1.3 where the client knows it, and 1.2 with forward secrecy where it does not', async () => {
    expect(await offered({})).toBe('TLSv1.3 TLS_AES_256_GCM_SHA384')
    expect(await offered({ maxVersion: 'TLSv1.2' })).toBe('TLSv1.2 TLS_ECDHE_ECDSA_WITH_AES_256_GCM_SHA384')
  })

  it('is no older version', async () => {
    const old = { minVersion: 'TLSv1', maxVersion: 'TLSv1.1', ciphers: 'DEFAULT@SECLEVEL=0' } as const
    expect(await offered(old)).toMatch(/PROTOCOL_VERSION|UNSUPPORTED_PROTOCOL/)
  })

  it('has no suite without authenticated encryption', async () => {
    for (const ciphers of ['ECDHE-ECDSA-AES128-SHA', 'ECDHE-ECDSA-AES256-SHA384'])
      expect(await offered({ maxVersion: 'TLSv1.2', ciphers }), ciphers).toMatch(/HANDSHAKE_FAILURE/)
  })

  it('is not left for plain HTTP: a request without it is neither answered nor redirected', async () => {
    const socket = connectPlainly(port(), '127.0.0.1')
    let answer = ''
    socket.setEncoding('latin1').on('data', (text: string) => {
      answer += text
    })
    socket.on('error', () => undefined)
    socket.write('GET /desk HTTP/1.1\r\nHost: localhost\r\n\r\n')
    await once(socket, 'close')
    expect(answer).not.toMatch(/HTTP\/1\.1 (?:2|3)/)
  })
})
