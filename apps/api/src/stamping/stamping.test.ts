import { type AddressInfo, connect, createServer } from 'node:net'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import {
  type Manner,
  type StampAuthority,
  startStampAuthority,
} from '../../../../tests/support/stamp-authority.ts'
import { stampingBy } from './stamping.ts'

/** Sources: RFC 3161 and RFC 5816; the authority is OpenSSL's. */
let authority: StampAuthority
beforeAll(async () => {
  authority = await startStampAuthority()
})
afterAll(() => authority.stop())

const bytes = Buffer.from('what is signed')
const here = { now: () => new Date() }

const stamped = async ({
  url = authority.address,
  roots = authority.root as string | null,
  clock = here,
  patienceMs = 60_000,
} = {}) => {
  const said: string[] = []
  const stamping = stampingBy(
    { stampUrl: url, stampRoots: roots },
    clock,
    (words) => said.push(words),
    patienceMs,
  )
  const token = await stamping.stamp(bytes)
  return { stamping, token, said, again: () => stamping.stamp(bytes) }
}

describe('a time-stamp authority', () => {
  it('is asked as RFC 3161 says, with the name and password of its address, and its stamp is taken', async () => {
    authority.answer('as-it-should')
    const { stamping, token, said } = await stamped({
      url: authority.address.replace('//', '//shop:pass%20word@'),
    })
    expect(said).toEqual([])
    expect(authority.asked.at(-1)).toEqual({
      type: 'application/timestamp-query',
      authorization: `Basic ${Buffer.from('shop:pass word').toString('base64')}`,
    })
    expect(await stamping.judge(token ?? new Uint8Array(), bytes)).toMatchObject({
      is: 'good',
      authority: 'Quillfeather Time',
    })
  })

  it.each<[Manner, string]>([
    ['refuses', 'refused: "Bad request format or system error.".'],
    ['refuses-by-http', 'HTTP status 503'],
    ['another-nonce', 'the time-stamp of something else'],
    ['another-imprint', 'the time-stamp of something else'],
    ['no-usage', 'a certificate that is not for time-stamps'],
    ['no-der', 'something that is no time-stamp'],
    ['cut-off', 'something that is no time-stamp'],
    ['huge', 'more than a time-stamp can be'],
  ])('that answers like this gives no stamp, and it is said in words: %s', async (manner, words) => {
    authority.answer(manner)
    const { token, said } = await stamped()
    expect(token).toBeNull()
    expect(said.join()).toContain(words)
  })

  it('that hangs is not waited for', async () => {
    authority.answer('hangs')
    const { token, said } = await stamped({ patienceMs: 50 })
    expect(token).toBeNull()
    expect(said.join()).toContain('did not answer in time')
  })

  it('that was silent three times in a row is not asked at the counter until the keeper has heard it again', async () => {
    const server = createServer()
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
    const { port } = server.address() as AddressInfo
    await new Promise((resolve) => server.close(resolve))
    authority.answer('as-it-should')
    const front = createServer((socket) => {
      const behind = connect(Number(new URL(authority.address).port), '127.0.0.1')
      socket.pipe(behind).pipe(socket)
      for (const end of [socket, behind]) end.on('error', () => undefined)
    })
    const place = { stampUrl: `http://127.0.0.1:${port}/stamp`, stampRoots: authority.root }
    const stamping = stampingBy(place, here, () => undefined, 60_000)
    for (let attempt = 0; attempt < 3; attempt += 1) expect(await stamping.stampWhileWaited(bytes)).toBeNull()
    await new Promise<void>((resolve) => front.listen(port, '127.0.0.1', resolve))
    const asked = authority.asked.length
    expect(await stamping.stampWhileWaited(bytes)).toBeNull()
    expect(authority.asked).toHaveLength(asked)
    expect(await stamping.stamp(bytes)).not.toBeNull()
    expect(await stamping.stampWhileWaited(bytes)).not.toBeNull()
    front.close()
  })

  it('that nobody reaches gives none, which is said once and not at each try', async () => {
    const server = createServer()
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
    const { port } = server.address() as { port: number }
    await new Promise((resolve) => server.close(resolve))
    const { token, said, again } = await stamped({ url: `http://127.0.0.1:${port}/` })
    expect([token, await again()]).toEqual([null, null])
    expect(said).toHaveLength(1)
    expect(said.join()).toContain('cannot be reached (ECONNREFUSED)')
  })

  it('whose root nobody here trusts, or whose clock is another, gives none', async () => {
    authority.answer('as-it-should')
    expect((await stamped({ roots: null })).said.join()).toContain('STAMP_CA')
    const yesterday = { now: () => new Date(Date.now() - 86_400_000) }
    const { token, said } = await stamped({ clock: yesterday })
    expect(token).toBeNull()
    expect(said.join()).toContain('Correct the clock of this machine')
  })
})
