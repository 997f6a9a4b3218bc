import { randomUUID } from 'node:crypto'
import {
  copyFileSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { withClient } from '@bayledger/db/with-client'
import type { Entry } from '@bayledger/ledger/entry'
import { hashEntry } from '@bayledger/ledger/hash-chain'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { listEntriesAfter } from '../../apps/api/src/features/entries/store/read-ledger.ts'
import { keptDigestKey } from '../../apps/api/src/proof/digest-key.ts'
import { faultLine } from '../../apps/api/src/proof/finding.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { type ProofBench, startProofBench } from '../support/proof-bench.ts'

/** Whoever may do anything in the database alters the record; verifying finds it. */
let bench: ProofBench
let sealed: string
let sealedNumber: string
let open: string
let openNumber: string

const digestFile = (number: number) => bench.digestFile(number)
const makeDigest = (day: string) => bench.makeDigest(day)
const verified = () => bench.verified()
const found = () => bench.found()
const altered = (table: string, statement: string, values: readonly unknown[] = []) =>
  bench.altered(table, statement, values)

beforeAll(async () => {
  bench = await startProofBench()
  const { replay, shop } = bench
  const desk = await replay.as('ottoline', 'desk')
  const first = freshCopy(shop.demo, 'T-2601')
  sealed = first.orderId
  await replay.sendUntil(first.lines)
  await desk.post(`/api/orders/${sealed}/reports`, { entryId: randomUUID() }).expect(201)
  await makeDigest('2026-01-12')
  const second = freshCopy(shop.demo, 'T-2603')
  open = second.orderId
  await replay.sendUntil(second.lines.slice(0, 20))
  await makeDigest('2026-01-13')
  await replay.sendUntil(second.lines.slice(20))
  sealedNumber = (await desk.get(`/api/orders/${sealed}`).expect(200)).body.number
  openNumber = (await desk.get(`/api/orders/${open}`).expect(200)).body.number
})
afterAll(() => bench.stop())

/** Changes a file of the digest folder, verifies, and puts it back. */
const withFile = async (file: string, change: (file: string) => void): Promise<string[]> => {
  copyFileSync(file, join(bench.folder, 'kept'))
  try {
    change(file)
    return await found()
  } finally {
    rmSync(file, { force: true })
    renameSync(join(bench.folder, 'kept'), file)
  }
}

const seqOf = async (orderId: string, kind: string): Promise<number> =>
  (await listEntriesAfter(bench.pool, bench.shop.demo.shop.id, orderId, 0)).find(
    (entry) => entry.kind === kind,
  )?.seq ?? 0

describe('verifying', () => {
  it('finds nothing in a record that nobody touched, and counts what no digest covers yet', async () => {
    const result = await verified()
    expect(result.faults.map(faultLine)).toEqual([])
    expect(result).toMatchObject({ orders: 2, reports: 1, days: 2 })
    const entries = await listEntriesAfter(bench.pool, bench.shop.demo.shop.id, open, 0)
    expect(result.uncovered).toBe(entries.length - 20)
  })

  it('finds a value that was changed in an entry, and names order and entry', async () => {
    const seq = await seqOf(open, 'wheel.checked')
    const lines = await altered(
      'entries',
      `update entries set payload = replace(payload::text, '"unit":"psi"', '"unit":"kPa"')::json
       where order_id = $1 and seq = $2`,
      [open, seq],
    )
    expect(lines[0]).toBe(
      `Order ${openNumber}, entry ${seq} (wheel.checked): entry ${seq} was changed after it was written`,
    )
    expect(lines).toHaveLength(1)
  })

  it('finds an entry that was taken out', async () => {
    const lines = await altered('entries', 'delete from entries where order_id = $1 and seq = 5', [open])
    expect(lines[0]).toContain(`Order ${openNumber}, entry 5`)
  })

  it('finds a covered order that was hashed again from end to end, its head with it', async () => {
    const chain = await listEntriesAfter(bench.pool, bench.shop.demo.shop.id, sealed, 0)
    const forged: Entry[] = []
    for (const { hash: _, ...entry } of chain) {
      const payload = JSON.parse(JSON.stringify(entry.payload).replaceAll('"unit":"psi"', '"unit":"kPa"'))
      const rest = { ...entry, payload, previousHash: forged.at(-1)?.hash ?? entry.previousHash } as never
      forged.push({ ...(rest as Entry), hash: hashEntry(rest) })
    }
    const lines = await altered('order_heads', 'update order_heads set hash = $2 where order_id = $1', [
      sealed,
      forged.at(-1)?.hash,
    ])
    expect(lines[0]).toContain("the order's head names entry")
    const both = await withClient(bench.shop.adminUrl, async (admin) => {
      await admin.query("set session_replication_role = 'replica'")
      await admin.query('update order_heads set hash = $2 where order_id = $1', [sealed, forged.at(-1)?.hash])
      try {
        return await altered(
          'entries',
          `update entries e set payload = f.payload::json, previous_hash = f.previous, hash = f.hash
           from unnest($2::int[], $3::text[], $4::text[], $5::text[]) as f (seq, payload, previous, hash)
           where e.order_id = $1 and e.seq = f.seq`,
          [
            sealed,
            forged.map(({ seq }) => seq),
            forged.map(({ payload }) => JSON.stringify(payload)),
            forged.map(({ previousHash }) => previousHash),
            forged.map(({ hash }) => hash),
          ],
        )
      } finally {
        await admin.query('update order_heads set hash = $2 where order_id = $1', [
          sealed,
          chain.at(-1)?.hash,
        ])
      }
    })
    expect(
      both.some((line) =>
        line.startsWith(`Order ${sealedNumber}, entry ${chain.length}: the chain was written again`),
      ),
    ).toBe(true)
    expect(await found()).toEqual([])
  })

  it('finds a head that was moved, and a floor list that shows what the entries do not make', async () => {
    expect(
      (await altered('order_heads', 'update order_heads set seq = seq + 1 where order_id = $1', [open]))[0],
    ).toContain(`Order ${openNumber}, entry`)
    expect(
      await altered('order_heads', 'update order_heads set sealed = true where order_id = $1', [open]),
    ).toEqual([
      expect.stringMatching(new RegExp(`^Order ${openNumber}: the floor list shows another sealed`)),
    ])
    expect(await altered('seen_sensors', 'delete from seen_sensors where order_id = $1', [open])).toEqual([
      expect.stringMatching(/sensors seen/),
    ])
  })

  it('finds a side that was changed, and one that is missing without an erasure', async () => {
    const seq = await seqOf(open, 'complaint.recorded')
    const digest = `(select payload ->> 'words' from entries where order_id = $1 and seq = ${seq})`
    expect(
      await altered(
        'personal_texts',
        `update personal_texts set text = 'no complaint' where digest = ${digest}`,
        [open],
      ),
    ).toEqual([
      `Order ${openNumber}, entry ${seq} (complaint.recorded): the personal text beside it does not match the digest that it names`,
    ])
    expect(
      await altered('personal_texts', `delete from personal_texts where digest = ${digest}`, [open]),
    ).toEqual([expect.stringMatching(/is missing, and no erasure says why$/)])
  })

  it('accepts a side that an erasure names', async () => {
    const erased = randomUUID()
    await withClient(bench.shop.adminUrl, (admin) =>
      admin.query(
        `insert into erasures (shop_id, id, order_id, subject, digests, reason, erased_by, erased_at)
         select shop_id, $2, order_id, 'a customer', array[payload ->> 'words'], 'asked for', '{}', now() from entries
         where order_id = $1 and kind = 'complaint.recorded'`,
        [open, erased],
      ),
    )
    const digest = `(select payload ->> 'words' from entries where order_id = $1 and kind = 'complaint.recorded')`
    expect(
      await altered('personal_texts', `delete from personal_texts where digest = ${digest}`, [open]),
    ).toEqual([])
  })

  it('finds another file under a sealed report, and a list of reports that was changed', async () => {
    const seq = await seqOf(sealed, 'report.sealed')
    const where = `Order ${sealedNumber}, entry ${seq} (report.sealed): `
    const lines = await withClient(bench.shop.adminUrl, async (admin) => {
      await admin.query('alter table blobs drop constraint blobs__digest_matches')
      try {
        return await altered('blobs', "update blobs set bytes = bytes || '\\x20'::bytea")
      } finally {
        await admin.query(
          "alter table blobs add constraint blobs__digest_matches check (sha256 = encode(sha256(bytes), 'hex'))",
        )
      }
    })
    expect(lines).toEqual([expect.stringMatching(/is not the one that was sealed$/)])
    expect(lines[0]?.startsWith(where)).toBe(true)
    expect(await altered('sealed_reports', "update sealed_reports set sha256 = repeat('0', 64)")).toEqual([
      expect.stringContaining('the list of reports says other things'),
    ])
    expect(await altered('blobs', 'delete from blobs')).toEqual([
      expect.stringMatching(/is missing, and no erasure says why$/),
    ])
  })
})

describe('the digests', () => {
  it('are signed, numbered and chained, each over what moved since the last, and nothing is written where nothing moved', async () => {
    const [first, second] = [1, 2].map((number) => JSON.parse(readFileSync(digestFile(number), 'utf8')))
    expect(first).toMatchObject({ number: 1, day: '2026-01-12', previous: '0'.repeat(64) })
    expect(first.orders.map(({ orderId }: { orderId: string }) => orderId)).toEqual([sealed])
    expect(second).toMatchObject({ number: 2, day: '2026-01-13', previous: first.hash })
    expect(second.orders).toMatchObject([{ orderId: open, seq: 20 }])
    expect(second.signedBy).toBe(keptDigestKey(bench.folder, true).fingerprint)
  })

  it('that are missing are named', async () => {
    for (const number of [1, 2])
      expect(await withFile(digestFile(number), unlinkSync)).toEqual([
        `Digest ${number} of ${bench.shop.demo.shop.name}: its file is missing from the digest folder`,
      ])
  })

  it('that were signed by another key, changed, or are no digest are named', async () => {
    const other = mkdtempSync(join(tmpdir(), 'bayledger-key-'))
    const { signDigest } = await import('../../apps/api/src/proof/digest.ts')
    const resign = (file: string, change: object) => {
      const { hash: _, signedBy: __, signature: ___, ...content } = JSON.parse(readFileSync(file, 'utf8'))
      rmSync(file)
      writeFileSync(file, JSON.stringify(signDigest({ ...content, ...change }, keptDigestKey(other, false))))
    }
    expect(await withFile(digestFile(2), (file) => resign(file, {}))).toEqual([
      expect.stringMatching(/^Digest 2 of .*: it is signed by another key/),
    ])
    rmSync(other, { recursive: true })
    const edit = (change: (text: string) => string) => (file: string) => {
      const text = readFileSync(file, 'utf8')
      rmSync(file)
      writeFileSync(file, change(text))
    }
    expect(
      await withFile(
        digestFile(1),
        edit((text) => text.replace('2026-01-12', '2026-01-11')),
      ),
    ).toEqual([expect.stringMatching(/^Digest 1 of .*: it was changed after it was signed/)])
    expect(
      await withFile(
        digestFile(1),
        edit(() => 'nothing'),
      ),
    ).toEqual([expect.stringMatching(/is not a digest of this shop$/)])
  })

  it('are missed where the database was made to forget them', async () => {
    expect(await altered('digests', 'delete from digests where number = 2')).toEqual([
      expect.stringMatching(/^Digest 2 of .*the database has no note of it/),
    ])
    expect(await altered('digests', "update digests set hash = repeat('a', 64) where number = 2")).toEqual([
      expect.stringMatching(/^Digest 2 of .*remembers another digest/),
    ])
  })

  it('are not started over with a new key while there are some', async () => {
    const key = join(bench.folder, 'signing', 'digest-key.pem')
    renameSync(key, join(bench.folder, 'away'))
    await expect(makeDigest('2026-01-14')).rejects.toThrow(/key that signed them is missing/)
    expect((await found())[0]).toMatch(/the key that signed it is missing/)
    renameSync(join(bench.folder, 'away'), key)
  })

  it('are written by one process at a time, and cover everything then', async () => {
    const made = await Promise.all(Array.from({ length: 4 }, () => makeDigest('2026-01-14')))
    expect(made.filter((digest) => digest !== null)).toMatchObject([
      { number: 3, orders: [{ orderId: open }] },
    ])
    expect(await verified()).toMatchObject({ days: 3, uncovered: 0, faults: [] })
  })
})

describe('a second person', () => {
  it('is the one whose PIN agreed to the entry, or verifying names it', async () => {
    const { orderId, lines } = freshCopy(bench.shop.demo, 'T-2614')
    await bench.replay.sendUntil(lines)
    const desk = await bench.replay.as('ottoline', 'desk')
    const { number } = (await desk.get(`/api/orders/${orderId}`).expect(200)).body
    const seq = await seqOf(orderId, 'refusal.recorded')
    expect(await found()).toEqual([])
    const where = `Order ${number}, entry ${seq} (refusal.recorded)`
    expect(
      await altered('second_person_proofs', `delete from second_person_proofs where kind <> 'sheet-figure'`),
    ).toEqual([`${where}: its second person never proved by PIN that they agree`])
    expect(
      await altered(
        'second_person_proofs',
        "update second_person_proofs set digest = repeat('0', 64) where kind <> 'sheet-figure'",
      ),
    ).toEqual([`${where}: the PIN of its second person was given for something else`])
  })

  it('of a figure on a sheet is the one whose PIN was typed for it, or verifying names every order that uses it', async () => {
    const seq = await seqOf(open, 'sheet.chosen')
    expect(await found()).toEqual([])
    const faults = await altered(
      'second_person_proofs',
      "delete from second_person_proofs where kind = 'sheet-figure'",
    )
    expect(faults).toContainEqual(
      expect.stringContaining(
        `Order ${openNumber}, entry ${seq} (sheet.chosen): whoever verified a figure of its sheet never proved it by PIN`,
      ),
    )
  })
})
