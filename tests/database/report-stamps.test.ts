import { createHash, randomUUID } from 'node:crypto'
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { openPool } from '@bayledger/db/pool'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { stampLateReports } from '../../apps/api/src/features/reports/service/stamp-reports.ts'
import { faultLine } from '../../apps/api/src/proof/finding.ts'
import { verifyDatabase } from '../../apps/api/src/proof/verify-database.ts'
import { stampLines } from '../../apps/api/src/proof/verify-stamp.ts'
import { stampingBy } from '../../apps/api/src/stamping/stamping.ts'
import { alter } from '../support/alter.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'
import { runOutsideTool } from '../support/run-outside-tool.ts'
import { type StampAuthority, startStampAuthority } from '../support/stamp-authority.ts'

/** Sources: RFC 3161, and ETSI EN 319 142-1 for the stamp in a signature; OpenSSL makes and verifies the stamps, pdfsig reads the file. */
let authority: StampAuthority
let shop: TestApp
let desk: Caller
const orderIds: string[] = []
const said: string[] = []
/** Whether the authority hangs: only then is it waited for but a moment, so that a slow machine changes nothing. */
let hangs = false
beforeAll(async () => {
  authority = await startStampAuthority()
  const clock = { now: () => new Date() }
  const place = { stampUrl: authority.address, stampRoots: authority.root }
  const within = (patienceMs: number) => stampingBy(place, clock, (words) => said.push(words), patienceMs)
  const [patient, hasty] = [within(60_000), within(100)]
  shop = await startTestApp(undefined, undefined, undefined, {
    ...patient,
    stamp: (bytes) => (hangs ? hasty : patient).stamp(bytes),
    stampWhileWaited: (bytes) => (hangs ? hasty : patient).stampWhileWaited(bytes),
  })
  const replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
  for (let order = 0; order < 2; order += 1) {
    const finished = freshCopy(shop.demo, 'T-2601')
    orderIds.push(finished.orderId)
    await replay.sendUntil(finished.lines)
  }
})
afterAll(async () => {
  await shop.stop()
  await authority.stop()
})

const seal = async (
  orderId = '',
): Promise<{ bytes: Buffer; file: string; text: string; address: string }> => {
  const { body } = await desk.post(`/api/orders/${orderId}/reports`, { entryId: randomUUID() }).expect(201)
  const address = `/api/orders/${orderId}/reports/${body.number}`
  const bytes = await read(address)
  expect(createHash('sha256').update(bytes).digest('hex')).toBe(body.sha256)
  const file = join(authority.folder, `${body.number}.pdf`)
  writeFileSync(file, bytes)
  const text = runOutsideTool('pdftotext', [file, '-']).output.replace(/\s+/g, ' ')
  expect(runOutsideTool('pdfsig', [file]).output).toContain('Signature is Valid.')
  return { bytes, file, text, address }
}
const read = async (address: string): Promise<Buffer> =>
  (await desk.get(address).responseType('blob').expect(200)).body
const check = async (bytes: Buffer) =>
  (
    await shop.nobody
      .call('post', '/api/report-checks', { 'content-type': 'application/pdf' })
      .send(bytes)
      .expect(200)
  ).body

describe('a report of a shop with a time-stamp authority', () => {
  it('is stamped as it is sealed, says so, and is judged by whoever checks it', async () => {
    authority.answer('as-it-should')
    const { bytes, text } = await seal(orderIds[0])
    expect(said).toEqual([])
    expect(text).toContain('confirmed when this file was sealed (RFC 3161)')
    const { verdict, stamp } = await check(bytes)
    expect(verdict).toBe('genuine')
    expect(stamp).toMatchObject({
      where: 'within',
      verdict: 'good',
      authority: 'Quillfeather Time',
      token: null,
    })
    expect(await stampLateReports(shop.parts), 'it is noted, and nobody is asked').toBe(1)
    expect(authority.asked).toHaveLength(1)
    expect(await stampLateReports(shop.parts)).toBe(0)
  })

  it('is sealed without one where the authority hangs, says so, and gets one beside it later: its bytes stay', async () => {
    authority.answer('hangs')
    hangs = true
    const { address, bytes, file, text } = await seal(orderIds[1])
    expect(text).toContain('This file was sealed without a time-stamp')
    expect(said.join()).toContain('did not answer in time')
    expect(await check(bytes)).toMatchObject({ verdict: 'genuine', stamp: null })
    expect(await stampLateReports(shop.parts)).toBe(0)
    authority.answer('as-it-should')
    hangs = false
    expect(await stampLateReports(shop.parts)).toBe(1)
    expect((await read(address)).equals(bytes)).toBe(true)
    const { stamp } = await check(bytes)
    expect(stamp).toMatchObject({ where: 'beside', verdict: 'good', authority: 'Quillfeather Time' })
    const token = join(authority.folder, 'beside')
    writeFileSync(token, Buffer.from(stamp.token, 'base64'))
    const verified = runOutsideTool('openssl', [
      ...['ts', '-verify', '-token_in', '-in', token, '-data', file, '-CAfile', authority.rootFile],
    ])
    expect(verified.output).toContain('Verification: OK')
    expect(await check(Buffer.concat([bytes, Buffer.from('\n')]))).toMatchObject({
      verdict: 'changed',
      stamp: null,
    })
  })

  it('is verified with its time-stamp, and an altered stamp is named', async () => {
    const pool = openPool({ url: shop.url, size: 1, onIdleError: () => undefined })
    const places = { dataFolder: authority.folder, digestFolder: authority.folder }
    const verified = (stampRoots: string | null) =>
      verifyDatabase(pool, { ...places, stampRoots }, () => undefined)
    const { stamps, faults } = await verified(authority.root)
    expect(faults).toEqual([])
    expect(stamps.map(({ isKnown }) => isKnown)).toEqual([true, true])
    expect(stampLines(stamps)).toEqual([
      expect.stringMatching(/^time-stamps 2 by Quillfeather Time, newest 2/),
    ])
    expect(stampLines((await verified(null)).stamps)[0]).toContain('whose root this machine does not know')
    await alter(
      shop,
      'update report_stamps set token = set_byte(token, 300, get_byte(token, 300) # 1) where token is not null',
      [],
    )
    expect((await verified(authority.root)).faults.map(faultLine)).toEqual([
      expect.stringMatching(/the time-stamp of report T-\d+-R1 does not hold$/),
    ])
    await pool.end()
  })
})
