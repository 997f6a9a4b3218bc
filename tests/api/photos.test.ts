import { randomUUID } from 'node:crypto'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { photoPieceBytes, photoPieceCount } from '@bayledger/contract/photos'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, cookiesIn, startTestApp, type TestApp, type TestTablet } from '../support/app.ts'
import { begunOrder } from '../support/begun-order.ts'
import { eraseDigests } from '../support/erase-digests.ts'
import { attachedPhoto, blackPng, drawnJpeg, noisyPng, pictureFacts } from '../support/pictures.ts'
import { runOutsideTool } from '../support/run-outside-tool.ts'
import type { WriteEntry } from '../support/write-entry.ts'

let shop: TestApp
let tablet: TestTablet
let ines: Caller
let desk: Caller
let orderId: string
let write: WriteEntry
beforeAll(async () => {
  shop = await startTestApp()
  const order = await begunOrder(shop, 'T-2603')
  ;({ orderId, write } = order)
  tablet = await shop.tablet()
  desk = await order.as('ottoline', 'desk')
  ines = await order.as('ines', 'bay')
})
afterAll(() => shop.stop())

const put = (digest: string, number: number, bytes: Uint8Array, caller: Caller = tablet) =>
  caller
    .call('put', `/api/photos/${digest}/pieces/${number}`, { 'content-type': 'application/octet-stream' })
    .send(Buffer.from(bytes))

const pieceOf = (bytes: Uint8Array, number: number) =>
  bytes.subarray(number * photoPieceBytes, (number + 1) * photoPieceBytes)

const attach = async (bytes: Uint8Array, rest: Parameters<typeof attachedPhoto>[1] = {}) => {
  const payload = attachedPhoto(bytes, rest)
  const taken = await write(ines, 'photo.attached', payload)
  expect(taken).toMatchObject({ result: 'accepted' })
  return { digest: payload.digest, entryId: taken.id }
}

const sendAll = async (digest: string, bytes: Uint8Array) => {
  for (let number = 0; number < photoPieceCount(bytes.length); number += 1)
    await put(digest, number, pieceOf(bytes, number)).expect(200)
}

describe('a photo that is sent in pieces', () => {
  it('arrives whole whatever the order of its pieces, however often each is sent', async () => {
    const bytes = await noisyPng(600)
    expect(photoPieceCount(bytes.length)).toBe(5)
    const { digest } = await attach(bytes)
    const status = async () => (await tablet.get(`/api/photos/${digest}`).expect(200)).body
    expect(await status()).toEqual({ state: 'wanted', byteLength: bytes.length, pieces: [] })
    await put(digest, 3, pieceOf(bytes, 3)).expect(200)
    await put(digest, 0, pieceOf(bytes, 0)).expect(200)
    await put(digest, 3, pieceOf(bytes, 3)).expect(200)
    // The tablet was off in between: it asks what is there, and sends the rest.
    expect(await status()).toMatchObject({ state: 'wanted', pieces: [0, 3] })
    for (const number of [4, 1]) await put(digest, number, pieceOf(bytes, number)).expect(200)
    const { body } = await put(digest, 2, pieceOf(bytes, 2)).expect(200)
    expect(body).toEqual({ state: 'received', byteLength: bytes.length, pieces: [] })
    expect((await put(digest, 2, pieceOf(bytes, 2)).expect(200)).body).toEqual(body)
    const { rows } = await shop.deps.pool.query('select count(*)::int as left from photo_pieces')
    expect(rows).toEqual([{ left: 0 }])
  })

  it('is shown as a copy of at most 300 KB without any data of the camera, and kept as it came', async () => {
    const bytes = await drawnJpeg({ withPlace: true })
    expect(await pictureFacts(bytes)).toMatchObject({ hasCameraData: true })
    const { digest } = await attach(bytes)
    await desk.get(`/api/orders/${orderId}/photos/${digest}`).expect(404)
    await sendAll(digest, bytes)
    const reply = await desk.get(`/api/orders/${orderId}/photos/${digest}`).expect(200)
    expect(reply.headers).toMatchObject({
      'content-type': 'image/jpeg',
      'x-content-type-options': 'nosniff',
      'cache-control': 'no-store',
    })
    expect(await pictureFacts(reply.body)).toEqual({
      format: 'jpeg',
      width: 1_200,
      height: 900,
      hasCameraData: false,
    })
    const { rows } = await shop.deps.pool.query('select bytes from blobs where sha256 = $1', [digest])
    expect(rows[0].bytes.equals(bytes)).toBe(true)
  })

  it('of noise, which no coder makes small, still has a copy of at most 300 KB', async () => {
    const bytes = await noisyPng(1_100)
    const { digest } = await attach(bytes)
    await sendAll(digest, bytes)
    const { body } = await ines.get(`/api/orders/${orderId}/photos/${digest}`).expect(200)
    expect(body.length).toBeLessThanOrEqual(300_000)
    expect((await pictureFacts(body)).format).toBe('jpeg')
  })

  it('is taken from the tablet whoever is on it, and from nobody who is neither tablet nor staff', async () => {
    const bytes = await drawnJpeg({ width: 400, height: 300 })
    const { digest } = await attach(bytes)
    await put(digest, 0, bytes, shop.nobody).expect(401)
    await put(digest, 0, bytes, ines).expect(200)
  })

  it('that lies in a file of another kind or name is refused in words', async () => {
    const bytes = await drawnJpeg({ width: 401, height: 300 })
    const other = await drawnJpeg({ width: 402, height: 300 })
    expect((await put(attachedPhoto(other).digest, 0, other).expect(404)).body.code).toBe('PHOTO_NOT_FOUND')
    const { digest } = await attach(bytes)
    const long = await put(digest, 0, Buffer.concat([bytes, Buffer.from('x')])).expect(422)
    expect(long.body).toMatchObject({ code: 'PHOTO_PIECE_WRONG' })
    expect((await put(digest, 1, bytes).expect(422)).body.code).toBe('PHOTO_PIECE_WRONG')
    expect((await put(digest, 0, Buffer.alloc(photoPieceBytes + 1)).expect(413)).body.code).toBe(
      'REQUEST_TOO_LARGE',
    )
  })

  it('that does not make its digest is thrown away, and may be sent again', async () => {
    const bytes = await drawnJpeg({ width: 403, height: 300 })
    const { digest } = await attach(bytes)
    const turned = Buffer.from(bytes)
    turned[turned.length - 20] = (turned[turned.length - 20] ?? 0) ^ 1
    expect((await put(digest, 0, turned).expect(422)).body.code).toBe('PHOTO_DAMAGED')
    expect((await tablet.get(`/api/photos/${digest}`).expect(200)).body.pieces).toEqual([])
    expect((await put(digest, 0, bytes).expect(200)).body.state).toBe('received')
  })

  it.each([
    ['a page', async () => Buffer.from('<html><script>alert(1)</script></html>')],
    ['a drawing with a program in it', async () => Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>')],
    ['half a picture', async () => (await drawnJpeg({ width: 900 })).subarray(0, 9_000)],
    ['a picture of 20,000 by 20,000 pixels', async () => blackPng(20_000)],
  ])('is refused as %s', async (_what, make) => {
    const bytes = await make()
    const { digest } = await attach(bytes)
    let last = { status: 200, body: { code: '', detail: '' } }
    for (let number = 0; number < photoPieceCount(bytes.length); number += 1)
      last = await put(digest, number, pieceOf(bytes, number))
    expect(last.status).toBe(422)
    expect(last.body.code).toBe('PHOTO_UNREADABLE')
    expect(last.body.detail).toMatch(/Take it again/)
  })

  it('of more than 40 MB is refused before a byte of it is sent', async () => {
    const payload = { ...attachedPhoto(Buffer.from('large')), byteLength: 40_000_001 }
    const refused = await write(ines, 'photo.attached', payload)
    expect(refused).toMatchObject({ result: 'refused', code: 'PHOTO_TOO_LARGE' })
    expect('words' in refused && refused.words).toMatch(/40\.0 MB, and at most 40 MB/)
  })

  it('of 39 MB grows the heap by less than 20 MB', async () => {
    const bytes = Buffer.concat([await drawnJpeg({ width: 404 }), Buffer.alloc(39_000_000)])
    const { digest } = await attach(bytes)
    const last = photoPieceCount(bytes.length) - 1
    await put(digest, 0, pieceOf(bytes, 0)).expect(200)
    // The pieces between, as they would lie there after they were sent: nothing but zeros.
    await shop.deps.pool.query(
      `insert into photo_pieces (shop_id, digest, number, bytes, received_at)
        select $1, $2, number, decode(repeat('00', $3), 'hex'), now() from generate_series(1, $4) as number`,
      [shop.demo.shop.id, digest, photoPieceBytes, last - 1],
    )
    const before = process.memoryUsage().heapUsed
    expect((await put(digest, last, pieceOf(bytes, last)).expect(200)).body.state).toBe('received')
    expect(process.memoryUsage().heapUsed - before).toBeLessThan(20_000_000)
  })

  it('is not taken and not shown once it was erased', async () => {
    const bytes = await drawnJpeg({ width: 405, height: 300 })
    const { digest } = await attach(bytes)
    await sendAll(digest, bytes)
    await eraseDigests(shop, [digest])
    expect((await put(digest, 0, bytes).expect(200)).body.state).toBe('erased')
    const { body } = await desk.get(`/api/orders/${orderId}/photos`).expect(200)
    expect(body.erased).toEqual([digest])
    expect(body.received).not.toContain(digest)
    await desk.get(`/api/orders/${orderId}/photos/${digest}`).expect(404)
  })
})

it('the picture of 20,000 by 20,000 pixels is a real one', async () => {
  expect(await pictureFacts(blackPng(20_000))).toMatchObject({ format: 'png', width: 20_000, height: 20_000 })
})

describe('a photo and who sees it', () => {
  it('is of its own order only', async () => {
    const other = await begunOrder(shop, 'T-2604')
    const bytes = await drawnJpeg({ width: 406, height: 300 })
    const { digest } = await attach(bytes)
    await sendAll(digest, bytes)
    await desk.get(`/api/orders/${other.orderId}/photos/${digest}`).expect(404)
    await shop.nobody.get(`/api/orders/${orderId}/photos/${digest}`).expect(401)
  })

  it('is the customer’s to see while the desk shows it', async () => {
    const bytes = await drawnJpeg({ width: 407, height: 300 })
    const { digest, entryId } = await attach(bytes)
    const link = await desk.post(`/api/orders/${orderId}/links`).expect(201)
    const opened = await shop.nobody.post('/api/customer/session', { secret: link.body.secret }).expect(201)
    const phone = shop.withCookies(cookiesIn(opened))
    const shown = async () => (await phone.get('/api/customer/order').expect(200)).body.photos
    const file = () => phone.get(`/api/customer/photos/${digest}`)
    await sendAll(digest, bytes)
    expect(await shown()).toEqual([])
    await file().expect(404)
    expect(await write(ines, 'photo.shared', { photoId: entryId, shared: true })).toMatchObject({
      result: 'refused',
    })
    await write(desk, 'photo.shared', { photoId: entryId, shared: true })
    expect(await shown()).toEqual([
      { digest, where: 'left front', what: 'damage', takenAt: '2026-01-12T16:39:00.000Z' },
    ])
    expect((await file().expect(200)).headers['content-type']).toBe('image/jpeg')
    await write(desk, 'photo.shared', { photoId: entryId, shared: false })
    expect(await shown()).toEqual([])
    await file().expect(404)
  })
})

describe('the sealed report', () => {
  it('shows the photos that have arrived with the time of capture, and says "not received" of the others', async () => {
    const order = await begunOrder(shop, 'T-2601')
    const bytes = await drawnJpeg({ width: 1_600, height: 1_200 })
    const photo = attachedPhoto(bytes, { wheel: 'RR', subject: 'stem' })
    await order.write(desk, 'photo.attached', photo)
    await order.write(desk, 'photo.attached', attachedPhoto(Buffer.from('still on the tablet')))
    await sendAll(photo.digest, bytes)
    const sealed = await desk
      .post(`/api/orders/${order.orderId}/reports`, { entryId: randomUUID() })
      .expect(201)
    const { body: pdf } = await desk
      .get(`/api/orders/${order.orderId}/reports/${sealed.body.number}`)
      .expect(200)
    const text = said(pdf, 'pdftotext', ['-raw'], ['-']).replace(/\s+/g, ' ')
    expect(text).toMatch(/Entry \d+: Right rear, stem\. Taken Jan 12, 2026, 11:39 AM\./)
    expect(text).toMatch(/Left front, damage Jan 12, 2026, 11:39 AM [0-9a-f]{16} not received/)
    const pictures = said(pdf, 'pdfimages', ['-list']).trim().split('\n').slice(2)
    expect(pictures.map((row) => row.trim().split(/\s+/).slice(3, 5))).toEqual([['720', '540']])
    expect(pdf.length).toBeLessThan(1_000_000)
  })
})

/** What a program from outside says of a PDF. */
const said = (pdf: Uint8Array, tool: 'pdftotext' | 'pdfimages', before: string[], after: string[] = []) => {
  const file = join(mkdtempSync(join(tmpdir(), 'bayledger-photos-')), 'report.pdf')
  writeFileSync(file, pdf)
  try {
    return runOutsideTool(tool, [...before, file, ...after]).output
  } finally {
    rmSync(dirname(file), { recursive: true })
  }
}
