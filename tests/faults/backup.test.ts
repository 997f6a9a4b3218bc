import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { findBackup, listBackups, logFolder } from '@bayledger/db/backup/backup-folder'
import { makeBackupKey, readRecipients } from '@bayledger/db/backup/backup-key'
import { type KeptLog, keepLog } from '@bayledger/db/backup/keep-log'
import { keepFiles } from '@bayledger/db/backup/kept-files'
import { makeBackup } from '@bayledger/db/backup/make-backup'
import { type BackupToRestore, restoreBackup } from '@bayledger/db/backup/restore-backup'
import { openClient } from '@bayledger/db/client'
import { type EmbeddedPostgres, startEmbeddedPostgres } from '@bayledger/db/embedded/start'
import { openPool } from '@bayledger/db/pool'
import { withClient } from '@bayledger/db/with-client'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { keepBackups } from '../../apps/api/src/backup-keeper.ts'
import { judgeRestored } from '../../apps/api/src/commands/restored/judge-restored.ts'
import { takeErasureNotes } from '../../apps/api/src/commands/restored/take-erasure-notes.ts'
import { keepPrivacy } from '../../apps/api/src/privacy-keeper.ts'
import { faultLine } from '../../apps/api/src/proof/finding.ts'
import { verifyDatabase } from '../../apps/api/src/proof/verify-database.ts'
import { createTestDatabase } from '../support/database.ts'
import { findMarks } from '../support/find-marks.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { type ProofBench, startProofBench } from '../support/proof-bench.ts'
import { makeQuickFolder } from '../support/quick-folder.ts'

/** A shop with one finished order, first in a PostgreSQL of one's own, then restored into a built-in one. */
let bench: ProofBench
let place: string
let key: { identity: string; recipient: string }
let server: EmbeddedPostgres
const quiet = () => undefined
const at = (...path: string[]): string => join(place, ...path)

beforeAll(async () => {
  place = makeQuickFolder('bayledger-backup-')
  key = await makeBackupKey(at('keys'))
  bench = await startProofBench()
  await bench.replay.sendUntil(freshCopy(bench.shop.demo, 'T-2603').lines)
  await bench.makeDigest('2026-01-12')
  mkdirSync(join(bench.folder, 'certificates'))
  writeFileSync(join(bench.folder, 'certificates/authority-key.pem'), 'of the authority that tablets trust')
  await makeBackup({
    folder: at('outside'),
    recipients: [key.recipient],
    database: { kind: 'tables', url: bench.shop.url },
    files: { ...filesIn(bench.folder), settings: { 'settings.txt': 'PORT=4310\n' } },
    progress: quiet,
  })
})
afterAll(async () => {
  await server?.stop()
  await bench?.stop()
  rmSync(place, { recursive: true, force: true })
})

const filesIn = (data: string) => ({
  dataFolder: data,
  digestFolder: join(data, 'digests'),
  settings: {},
})

const restored = (from: string, to: string, how: Partial<BackupToRestore> = {}) =>
  restoreBackup(
    {
      backup: findBackup(at(from), null),
      identities: [key.identity],
      to: at(to),
      until: 'backup',
      outside: null,
      progress: quiet,
      ...how,
    },
    async (shop) => {
      const { verification, differences, laterDigests } = await judgeRestored(shop, quiet)
      const words = await withClient(shop.serviceUrl, async (client) => {
        const { rows } = await client.query("select encode(bytes, 'escape') as word from blobs order by 1")
        return rows.map(({ word }) => String(word)).filter((word) => word.startsWith('word '))
      })
      const { faults, ...sums } = verification
      return { faults: faults.map(faultLine), differences, laterDigests, words, sums }
    },
  )

/** Something of the record that is written and seen again: an attached file. Gives when it was there, by the database. */
const write = (word: string): Promise<Date> =>
  withClient(server.serviceUrl, async (client) => {
    const bytes = Buffer.from(`word ${word}`)
    await client.query(
      `insert into blobs (shop_id, sha256, media_type, bytes, created_at) values ($1, $2, 'text/plain', $3, now())`,
      [bench.shop.demo.shop.id, createHash('sha256').update(bytes).digest('hex'), bytes],
    )
    // A moment with room before and after it: PostgreSQL counts microseconds, a date milliseconds.
    await client.query('select pg_sleep(0.01)')
    const { rows } = await client.query<{ at: Date }>('select clock_timestamp() as at')
    await client.query('select pg_sleep(0.01)')
    return rows[0]?.at ?? new Date(0)
  })

/** One round of copying the log. */
const kept = new Set<string>()
let round: KeptLog | null = null
const copyLog = async (): Promise<void> => {
  round = await keepLog(
    {
      superuserUrl: server.superuserUrl,
      folder: at('backups'),
      recipients: [key.recipient],
      keepFiles: (line) =>
        keepFiles(line, { signing: at('shop/signing'), digests: at('shop/digests') }, [key.recipient], kept),
    },
    round,
  )
}

describe('a backup of tables', () => {
  let another: Awaited<ReturnType<typeof createTestDatabase>>
  const elsewhere = () => ({ serviceUrl: another.serviceUrl, ownerUrl: another.url })
  beforeAll(async () => {
    another = await createTestDatabase('empty')
  })
  afterAll(() => another?.drop())

  it('becomes a shop on the built-in PostgreSQL, in which everything verifies and counts the same', async () => {
    const { faults: _, ...sums } = await bench.verified()
    const found = await restored('outside', 'shop')
    expect(found).toMatchObject({ faults: [], differences: [], laterDigests: 0, sums })
    expect(sums).toMatchObject({ orders: 1, days: 1 })
    expect(readFileSync(at('shop/settings/settings.txt'), 'utf8')).toBe('PORT=4310\n')
    expect(existsSync(at('shop/signing/digest-key.pem'))).toBe(true)
    expect(readFileSync(at('shop/certificates/authority-key.pem'), 'utf8')).toMatch(/that tablets trust/)
    expect(await readRecipients(at('shop'))).toEqual([key.recipient])
  })

  it('fills an empty database of another PostgreSQL, and is refused where it is not empty', async () => {
    const found = await restored('outside', 'beside', { outside: elsewhere() })
    expect(found).toMatchObject({ faults: [], differences: [], sums: { orders: 1, days: 1 } })
    await expect(restored('outside', 'beside-again', { outside: elsewhere() })).rejects.toThrow(
      /is not empty/,
    )
    expect(existsSync(at('beside-again'))).toBe(false)
  })

  it('brings back nobody who was erased after it was made: their notes have them erased before anybody is answered', async () => {
    const marks = await eraseSomebody()
    expect(await findMarks(another.url, marks)).toEqual(
      expect.arrayContaining(['customers.name', 'customers.phone', 'vehicles.plate']),
    )
    expect(takeErasureNotes(join(bench.folder, 'digests'), at('beside/digests'))).toBe(1)
    const pool = openPool({ url: another.serviceUrl, size: 2, onIdleError: quiet })
    const prisma = openClient(pool)
    const digestPlaces = { dataFolder: at('beside'), digestFolder: at('beside/digests') }
    try {
      await keepPrivacy({ ...bench.shop.parts, pool, prisma, digestPlaces }, (words, error) => {
        throw error ?? new Error(words)
      }).look()
    } finally {
      await prisma.$disconnect()
      await pool.end()
    }
    expect(await findMarks(another.url, marks)).toEqual([])
    const verifier = openPool({ url: another.serviceUrl, size: 1, onIdleError: quiet })
    const verified = await verifyDatabase(verifier, digestPlaces, quiet).finally(() => verifier.end())
    expect(verified).toMatchObject({ faults: [], orders: 1, days: 1, unerased: 0 })
  })
})

/** Erases a customer whose backup was made before. Gives what names them. */
const eraseSomebody = async (): Promise<string[]> => {
  const { shop, folder } = bench
  Object.assign(shop.parts.digestPlaces, { dataFolder: folder, digestFolder: join(folder, 'digests') })
  const owner = await shop.desk('marguerite')
  const { rows } = await shop.parts.pool.query<{ id: string; name: string; phone: string; plate: string }>(
    `select c.id, c.name, c.phone, v.plate from customers c
      join vehicles v on v.shop_id = c.shop_id and v.customer_id = c.id
      where c.phone is not null and v.plate is not null
        and not exists (select from order_heads h where h.shop_id = c.shop_id and h.customer_id = c.id)
      order by c.id limit 1`,
  )
  const [person] = rows
  if (person === undefined) throw new Error('everybody has an order')
  await owner
    .post(`/api/customers/${person.id}/erasure`, { reason: 'asked', identity: 'in-person' })
    .expect(201)
  const marks = [person.name, person.phone, person.plate]
  expect(await findMarks(shop.ownerUrl, marks)).toEqual([])
  return marks
}

describe('a PostgreSQL of one’s own', () => {
  it('is copied by the service once a day of the shop; of what was written since it keeps the log itself', async () => {
    const said: string[] = []
    const keeper = keepBackups({
      config: {
        ...{ dataFolder: bench.folder, digestFolder: join(bench.folder, 'digests') },
        ...{ backupFolder: at('nightly-outside'), backupKeep: { days: 1, weeks: 0, months: 0 } },
        ...{ databaseUrl: bench.shop.url, databaseOwnerUrl: bench.shop.ownerUrl },
      },
      superuserUrl: null,
      clock: { now: () => new Date() },
      timeZone: async () => 'America/New_York',
      problem: (words, error) => said.push(`${words} ${error}`),
    })
    await keeper.look()
    expect(keeper.state()).toMatchObject({ state: 'no-key' })
    await makeBackupKey(bench.folder)
    await keeper.look()
    await keeper.made()
    expect(said).toEqual([])
    expect(keeper.state()).toMatchObject({ state: 'fine', keptUpTo: null })
    const made = listBackups(at('nightly-outside'))
    expect(made).toMatchObject([{ log: null }])
    await keeper.look()
    await keeper.stop()
    expect(listBackups(at('nightly-outside'))).toEqual(made)
  })
})

describe('a backup of the built-in PostgreSQL', () => {
  beforeAll(async () => {
    server = await startEmbeddedPostgres({ dataFolder: at('shop'), progress: quiet })
    await copyLog()
  })

  it('is whole and counts exactly what it counted, though the shop went on writing', async () => {
    let done = false
    const making = makeBackup({
      folder: at('backups'),
      recipients: [key.recipient],
      database: { kind: 'cluster', superuserUrl: server.superuserUrl, database: 'bayledger' },
      files: filesIn(at('shop')),
      progress: quiet,
    }).finally(() => {
      done = true
    })
    let written = 0
    for (; !done; written += 1) await write(`during ${written}`)
    const { counts } = await making
    await write('right after')
    const found = await restored('backups', 'rehearsed')
    expect(found).toMatchObject({ faults: [], differences: [], sums: { orders: 1, days: 1 } })
    expect(found.words).not.toContain('word right after')
    expect(found.words.length).toBeGreaterThan(0)
    expect(found.words.length).toBeLessThanOrEqual(written)
    expect(counts.blobs).toBeGreaterThanOrEqual(found.words.length)
  })

  it('is followed by the log: up to the last round, or up to a moment before it', async () => {
    await copyLog()
    const before = await write('before')
    await write('after')
    const digest = `digests/${bench.shop.demo.shop.id}/000002.json`
    writeFileSync(at('shop', digest), '{}')
    await copyLog()
    await write('never copied')

    const newest = await restored('backups', 'newest', { until: 'newest' })
    expect(newest).toMatchObject({ faults: [], laterDigests: 1 })
    expect(newest.words).toEqual(expect.arrayContaining(['word right after', 'word before', 'word after']))
    expect(newest.words).not.toContain('word never copied')
    expect(existsSync(at('newest', digest.replace('digests', 'digests-later')))).toBe(true)

    const then = await restored('backups', 'then', { until: before })
    expect(then.faults).toEqual([])
    expect(then.words).toEqual(expect.arrayContaining(['word right after', 'word before']))
    expect(then.words).not.toContain('word after')
    rmSync(at('shop', digest))
  })

  it('takes all of the log where it ends before the moment', async () => {
    const late = await restored('backups', 'late', { until: new Date(Date.now() + 3_600_000) })
    expect(late.words).toEqual(expect.arrayContaining(['word before', 'word after']))
  })

  it('goes on in a line of its own where PostgreSQL had to let the log go', async () => {
    const line = round?.line ?? ''
    await withClient(server.superuserUrl, (client) =>
      client.query('select pg_drop_replication_slot($1)', [`bayledger_log_${line}`]),
    )
    await copyLog()
    expect(round?.line).not.toBe(line)
    expect(readdirSync(logFolder(at('backups'), round?.line ?? '')).length).toBeGreaterThan(0)
  })

  it('is made by the service itself after the day’s close, and what keeps it from being made is said', async () => {
    rmSync(at('shop/backup-recipients.txt'))
    let now = new Date()
    const said: string[] = []
    const keeperOn = (backupFolder: string) =>
      keepBackups({
        config: {
          dataFolder: at('shop'),
          digestFolder: at('shop/digests'),
          backupFolder,
          backupKeep: { days: 1, weeks: 0, months: 0 },
          databaseUrl: null,
          databaseOwnerUrl: null,
        },
        superuserUrl: server.superuserUrl,
        clock: { now: () => now },
        timeZone: async () => 'America/New_York',
        problem: (words) => said.push(words),
      })
    const keeper = keeperOn(at('nightly'))
    await keeper.look()
    expect(keeper.state()).toMatchObject({ state: 'no-key', newestAt: null })
    const { recipient } = await makeBackupKey(at('shop'))
    expect(recipient).not.toBe(key.recipient)
    await keeper.look()
    await keeper.made()
    expect(keeper.state()).toMatchObject({ state: 'fine', keptUpTo: now.toISOString() })
    const first = keeper.state().newestAt

    now = new Date(now.getTime() + 25 * 3_600_000)
    await keeper.look()
    await keeper.made()
    expect(keeper.state().newestAt).not.toBe(first)
    expect(listBackups(at('nightly'))).toHaveLength(1)
    now = new Date(now.getTime() + 48 * 3_600_000)
    expect(keeper.state().state).toBe('old')
    expect(said).toEqual([])

    writeFileSync(at('full'), 'this is no folder')
    const failing = keeperOn(at('full'))
    await failing.look()
    expect(failing.state()).toMatchObject({ state: 'failing', newestAt: null, keptUpTo: null })
    expect(said).toEqual([expect.stringMatching(/could not be copied to the backups/)])
    await failing.stop()
    await keeper.stop()
  })

  it('is restored into an empty place only, and from a moment that it holds', async () => {
    const occupied = at('occupied')
    mkdirSync(occupied)
    writeFileSync(join(occupied, 'letter'), 'Dear shop')
    await expect(restored('backups', 'occupied')).rejects.toThrow(/is not empty.*into an empty place only/)
    expect(readdirSync(occupied)).toEqual(['letter'])
    const yesterday = new Date(Date.now() - 86_400_000)
    await expect(restored('backups', 'too-early', { until: yesterday })).rejects.toThrow(
      /was made after that moment .* Use an older one/,
    )
    const outside = { serviceUrl: bench.shop.url, ownerUrl: bench.shop.ownerUrl }
    await expect(restored('backups', 'elsewhere', { outside })).rejects.toThrow(/npm run backup -- --tables/)
    expect(readdirSync(place).filter((name) => name.includes('restoring'))).toEqual([])
  })
})
