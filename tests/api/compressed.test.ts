import { once } from 'node:events'
import { get, type IncomingMessage } from 'node:http'
import type { AddressInfo } from 'node:net'
import { gunzipSync } from 'node:zlib'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'

let shop: TestApp
let desk: Caller
let port: number
beforeAll(async () => {
  shop = await startTestApp()
  desk = await shop.desk('ottoline')
  shop.server.listen(0, '127.0.0.1')
  await once(shop.server, 'listening')
  port = (shop.server.address() as AddressInfo).port
})
afterAll(() => shop.stop())

/** The answer as it comes over the wire: nothing is unpacked on the way. */
const fetched = async (path: string, encoding: string): Promise<IncomingMessage> => {
  const request = get({
    port,
    path,
    headers: { cookie: desk.cookies.join('; '), ...(encoding ? { 'accept-encoding': encoding } : {}) },
  })
  const [response] = (await once(request, 'response')) as [IncomingMessage]
  return response
}
const bytesOf = async (response: IncomingMessage): Promise<Buffer> => {
  const parts: Buffer[] = []
  for await (const part of response) parts.push(part as Buffer)
  return Buffer.concat(parts)
}

describe('a reply', () => {
  it('that is long comes compressed to whoever takes gzip, and holds the same', async () => {
    const plain = await fetched('/api/sheets', '')
    const packed = await fetched('/api/sheets', 'gzip, deflate, br')
    expect(plain.headers['content-encoding']).toBeUndefined()
    expect(packed.headers['content-encoding']).toBe('gzip')
    for (const { headers } of [plain, packed]) expect(headers.vary).toMatch(/accept-encoding/)
    const [long, short] = [await bytesOf(plain), await bytesOf(packed)]
    expect(gunzipSync(short).equals(long)).toBe(true)
    expect(short.length).toBeLessThan(long.length / 3)
    expect(packed.headers['content-length'] ?? String(short.length)).toBe(String(short.length))
  })

  it('that is short comes as it is', async () => {
    const response = await fetched('/api/sessions/current', 'gzip')
    expect(response.headers['content-encoding']).toBeUndefined()
    expect(JSON.parse((await bytesOf(response)).toString())).toBeTypeOf('object')
  })

  it('that never ends, the live stream, comes as it is', async () => {
    const response = await fetched('/api/live', 'gzip')
    expect(response.headers['content-encoding']).toBeUndefined()
    const [first] = (await once(response, 'data')) as [Buffer]
    expect(first.toString()).toMatch(/^retry: 2000\n/)
    response.destroy()
  })
})
