import { once } from 'node:events'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { randomFrom } from '../../packages/reckoning/src/diagnosis/physics/random.test-support.ts'
import { type Network, startNetwork } from './support/network.ts'
import { drawFate, type Fate, fair, weathers } from './support/weather.ts'

/** A server that remembers what it was sent, behind a network that we make good or bad. */
let origin: Server
let network: Network
let taken: string[]
beforeEach(async () => {
  taken = []
  origin = createServer(async (request, response) => {
    let body = ''
    for await (const part of request) body += part
    taken.push(`${request.method} ${request.url} ${body}`)
    response.writeHead(201, { 'content-type': 'text/plain', 'x-seen': 'yes' }).end(`taken: ${body}`)
  })
  origin.listen(0, '127.0.0.1')
  await once(origin, 'listening')
  network = await startNetwork((origin.address() as AddressInfo).port)
})
afterEach(async () => {
  await network.stop()
  origin.close()
})

const post = (body: string) => fetch(`${network.address}/api/entries`, { method: 'POST', body })
const under = (fate: Fate) => network.setWeather({ [fate]: 1 })

describe('a network with a weather', () => {
  it('passes request and answer on as they are', async () => {
    const reply = await post('one')
    expect([reply.status, reply.headers.get('x-seen'), await reply.text()]).toEqual([
      201,
      'yes',
      'taken: one',
    ])
    expect(taken).toEqual(['POST /api/entries one'])
  })

  it('loses a request before the server has it', async () => {
    under('lost')
    await expect(post('one')).rejects.toThrow()
    expect(taken).toEqual([])
  })

  it.each(['unanswered', 'torn'] as const)('takes a request whose answer is %s', async (fate) => {
    under(fate)
    await expect(post('one').then((reply) => reply.text())).rejects.toThrow()
    expect(taken).toEqual(['POST /api/entries one'])
  })

  it.each([
    ['half-open', []],
    ['taken-half-open', ['POST /api/entries one']],
  ] as const)('leaves a %s connection as it is until the tablet reconnects', async (fate, has) => {
    under(fate)
    const never = post('one').then(
      () => 'answered',
      () => 'ended',
    )
    await vi.waitUntil(() => network.history().length === 1, { timeout: 30_000 })
    network.setWeather(fair)
    // Another connection works meanwhile.
    expect((await post('two')).status).toBe(201)
    await vi.waitUntil(() => taken.length === has.length + 1, { timeout: 30_000 })
    network.reconnect()
    expect(await never).toBe('ended')
    expect(taken.filter((line) => line.endsWith('one'))).toEqual(has)
  })

  it('delivers a request twice and answers it once', async () => {
    under('twice')
    expect((await post('one')).status).toBe(201)
    expect(taken).toEqual(['POST /api/entries one', 'POST /api/entries one'])
  })

  it('lets a later request overtake an earlier one', async () => {
    under('overtaken')
    const first = post('one')
    await vi.waitUntil(() => network.history().length === 1, { timeout: 30_000 })
    network.setWeather(fair)
    await post('two')
    await first
    expect(taken).toEqual(['POST /api/entries two', 'POST /api/entries one'])
  })

  it.each(['portal-page', 'portal-redirect'] as const)('answers in the server’s place: %s', async (fate) => {
    under(fate)
    const reply = await post('one')
    expect([reply.status, reply.headers.get('content-type')]).toEqual([200, 'text/html; charset=utf-8'])
    expect(taken).toEqual([])
  })

  it('ends the connection where the server is down', async () => {
    origin.close()
    origin.closeAllConnections()
    await expect(post('one')).rejects.toThrow()
  })

  it('leaves what is not of the service alone, and says what became of the rest', async () => {
    under('lost')
    expect((await fetch(`${network.address}/assets/bay.js`)).status).toBe(201)
    await expect(post('one')).rejects.toThrow()
    expect(network.history()).toEqual(['POST /api/entries: lost'])
  })

  it('decides by its seed alone, and every fate of a storm comes up', () => {
    const drawn = (seed: number) => {
      const random = randomFrom(seed)
      return Array.from({ length: 300 }, () => drawFate(weathers.storm ?? fair, random))
    }
    expect(drawn(7)).toEqual(drawn(7))
    expect(drawn(7)).not.toEqual(drawn(8))
    expect(new Set(drawn(7)).size).toBe(11)
  })
})
