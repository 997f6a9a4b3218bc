import { randomUUID } from 'node:crypto'
import { withClient } from '@bayledger/db/with-client'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { freshCopy } from '../support/fresh-copy.ts'
import { attachedPhoto, drawnJpeg } from '../support/pictures.ts'
import { type ProofBench, startProofBench } from '../support/proof-bench.ts'
import { writerOn } from '../support/write-entry.ts'

/** Photos that were altered or deleted by hand; verifying finds them. */
let bench: ProofBench
let digest: string
beforeAll(async () => {
  bench = await startProofBench()
  const { replay, shop } = bench
  const desk = await replay.as('ottoline', 'desk')
  const order = freshCopy(shop.demo, 'T-2604')
  await replay.sendUntil(order.lines)
  const write = writerOn(shop, order.orderId)
  const bytes = await drawnJpeg({ width: 300, height: 200 })
  const photo = attachedPhoto(bytes)
  digest = photo.digest
  await write(desk, 'photo.attached', photo)
  await write(desk, 'photo.attached', attachedPhoto(Buffer.from('still on the tablet')))
  await desk
    .call('put', `/api/photos/${digest}/pieces/0`, { 'content-type': 'application/octet-stream' })
    .send(bytes)
    .expect(200)
})
afterAll(() => bench.stop())

const view = '(select view_digest from received_photos)'

describe('the photos', () => {
  it('verify, and those that have not arrived are counted', async () => {
    expect(await bench.verified()).toMatchObject({ photos: 2, awaited: 1, faults: [] })
  })

  it('that were deleted, or whose copy was, are found', async () => {
    expect(await bench.altered('blobs', 'delete from blobs where sha256 = $1', [digest])).toEqual([
      expect.stringMatching(
        /\(photo\.attached\): the photo that it names is missing, and no erasure says why$/,
      ),
    ])
    expect(await bench.altered('blobs', `delete from blobs where sha256 = ${view}`)).toEqual([
      expect.stringMatching(/the copy of its photo that is shown is missing or was changed$/),
    ])
  })

  it('that were changed are found', async () => {
    const lines = await withClient(bench.shop.adminUrl, async (admin) => {
      await admin.query('alter table blobs drop constraint blobs__digest_matches')
      try {
        return await bench.altered(
          'blobs',
          "update blobs set bytes = bytes || '\\x20'::bytea where sha256 = $1",
          [digest],
        )
      } finally {
        await admin.query(
          "alter table blobs add constraint blobs__digest_matches check (sha256 = encode(sha256(bytes), 'hex'))",
        )
      }
    })
    expect(lines).toEqual([
      expect.stringMatching(/the photo that it names is not the one that was received$/),
    ])
  })

  it('that an erasure names may be missing', async () => {
    await withClient(bench.shop.adminUrl, (admin) =>
      admin.query(
        `insert into erasures (shop_id, id, order_id, subject, digests, reason, erased_by, erased_at)
         values ($1, $2, null, 'a photo', $3, 'asked for', '{}', now())`,
        [bench.shop.demo.shop.id, randomUUID(), [digest]],
      ),
    )
    expect(await bench.altered('blobs', `delete from blobs where sha256 in ($1, ${view})`, [digest])).toEqual(
      [],
    )
  })
})
