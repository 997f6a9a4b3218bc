import { randomUUID } from 'node:crypto'
import type { CsvPreview } from '@bayledger/contract/csv'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'

let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const path = '/api/register/instruments'
const file = { 'content-type': 'application/octet-stream' }
const exported = async (): Promise<string> => (await owner.get(`${path}.csv`).expect(200)).text
const preview = async (text: string): Promise<CsvPreview> =>
  (await owner.call('post', `${path}/import/preview`, file).send(Buffer.from(text)).expect(200)).body
const apply = (text: string, digest: string) =>
  owner
    .call('post', `${path}/import?digest=${digest}&refused=leave-out`, {
      ...file,
      'idempotency-key': randomUUID(),
    })
    .send(Buffer.from(text))
const withRow = async (code: string, row: string) =>
  (await exported())
    .split('\r\n')
    .map((line) => (line.startsWith(`${code},`) ? row : line))
    .join('\r\n')
const and = async (...rows: string[]) => `${(await exported()).trimEnd()}\r\n${rows.join('\r\n')}\r\n`
const codeOf = async (code: string) =>
  (await owner.get(path).expect(200)).body.records.find(
    (one: { content: { code: string } }) => one.content.code === code,
  )

it('comes back as the same, an overdue wrench and a gauge far off the master included', async () => {
  expect((await preview(await exported())).counts).toEqual({ added: 0, changed: 0, same: 5, refused: 0 })
})

it('adds and changes, each with its history', async () => {
  const text = (
    await withRow('W-07', 'W-07,wrench,Tamber Street,30,250,lbf·ft,4,,,2026-01-05,2027-01-05,C-7,no,')
  ).trimEnd()
  const whole = `${text}\r\nGA-9,gauge,Millrace Road,,,,,-0.4,2026-01-05,,,,no,\r\n`
  const shown = await preview(whole)
  expect(shown.counts).toEqual({ added: 1, changed: 1, same: 4, refused: 0 })
  expect(shown.changed[0]?.fields.map(({ column }) => column)).toEqual([
    'calibrated_on',
    'due_on',
    'certificate',
  ])
  await apply(whole, shown.digest).expect(200)
  const changed = await codeOf('W-07')
  expect(changed).toMatchObject({ version: 2, content: { certificate: 'C-7' }, facts: { cycles: 0 } })
  const { body } = await owner.get(`${path}/${changed.id}`).expect(200)
  expect(body.history.map(({ by }: { by: string | null }) => by)).toEqual(['Marguerite Ashby-Bell', null])
  expect((await codeOf('GA-9')).content).toMatchObject({ kind: 'gauge', offsetPsi: -0.4 })
  expect((await apply(whole, shown.digest).expect(409)).body.code).toBe('CSV_PREVIEW_STALE')
})

it('refuses what cannot be and what is likely a slip, row by row, and leaves the others alone', async () => {
  const text = await and(
    'W-90,wrench,Nowhere,30,250,lbf·ft,,,,,2027-01-05,,no,',
    'W-91,wrench,Tamber Street,40,340,lbf·ft,,,,,2027-01-05,,no,',
    'W-92,wrench,Tamber Street,250,30,lbf·ft,,,,,2027-01-05,,no,',
    'W-93,wrench,Tamber Street,30,250,lbf·ft,,,,,,,no,',
    'GA-1,wrench,Tamber Street,30,250,lbf·ft,,,,,2027-01-05,,no,',
    'W-94,wrench,Tamber Street,-30,250,lbf·ft,,,,,2027-01-05,,no,',
    'W-95,wrench,Tamber Street,30,250,lbf·ft,4,,,,2027-01-05,,no,',
  )
  const { refused, counts } = await preview(text)
  expect(counts).toMatchObject({ added: 1, changed: 0 })
  expect(refused.map(({ name, faults }) => [name, faults[0]?.column])).toEqual(
    expect.arrayContaining([
      ['W-90', 'place'],
      ['W-91', 'range_unit'],
      ['W-92', 'range_high'],
      ['W-93', 'due_on'],
      ['W-94', 'range_low'],
    ]),
  )
})
