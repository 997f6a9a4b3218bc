import { randomUUID } from 'node:crypto'
import type { CsvPreview } from '@bayledger/contract/csv'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { withCells } from '../support/csv-cells.ts'

let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const send = (path: string, file: string, key: string = randomUUID()) =>
  owner
    .call('post', path, { 'content-type': 'application/octet-stream', 'idempotency-key': key })
    .send(Buffer.from(file))
const preview = async (file: string): Promise<CsvPreview> =>
  (await send('/api/sheets/import/preview', file).expect(200)).body
const apply = (file: string, digest: string, refused = 'leave-out', key?: string) =>
  send(`/api/sheets/import?digest=${digest}&refused=${refused}`, file, key)
const exported = async (): Promise<string> => (await owner.get('/api/sheets.csv').expect(200)).text
const sheets = async (): Promise<SpecificationSheet[]> =>
  (await owner.get('/api/sheets').expect(200)).body.sheets
describe('specification sheets as CSV', () => {
  it('come back as the same', async () => {
    const { counts } = await preview(await exported())
    expect(counts).toEqual({ added: 0, changed: 0, same: shop.demo.sheets.length, refused: 0 })
  })

  it('keep a label as it is printed in bar and where learning and lifting were read, and come back as the same', async () => {
    const cells = {
      label_front_psi: '33.4',
      label_front_kpa: '',
      label_front_typed: '2.3 bar',
      relearn_source: 'maker-manual',
      relearn_reference: 'page 212',
      lift_notes: 'Front point.',
      lift_source: 'own-measurement',
      lift_reference: 'the lift',
    }
    const kind = (await sheets()).find(({ relearn }) => relearn !== null)?.name ?? ''
    const wrong = await preview(withCells(await exported(), kind, { ...cells, label_front_psi: '35' }))
    expect(wrong.refused[0]?.faults).toEqual([
      expect.objectContaining({ column: 'label_front_psi', found: '35' }),
    ])
    const half = await preview(withCells(await exported(), kind, { ...cells, relearn_reference: '' }))
    expect(half.refused[0]?.faults[0]?.column).toBe('relearn_reference')
    const file = withCells(await exported(), kind, cells)
    await apply(file, (await preview(file)).digest).expect(200)
    const changed = (await sheets()).find(({ name }) => name === kind)
    expect(changed).toMatchObject({
      placard: { front: { psi: 33.4, kPa: null, typed: { value: 2.3, unit: 'bar' } } },
      sources: {
        relearn: { kind: 'maker-manual', enteredBy: people.marguerite.id, verifiedBy: null },
        lifting: { reference: 'the lift' },
      },
    })
    const { counts } = await preview(await exported())
    expect(counts).toMatchObject({ added: 0, changed: 0, refused: 0 })
  })

  it('show what would change field by field, and change it once, for whoever was shown it', async () => {
    const file = withCells(await exported(), 'Vantrell Linnet', {
      wheel_torque: '85',
      lift_notes: 'Front point.',
    })
    const shown = await preview(file)
    expect(shown.changed).toEqual([
      expect.objectContaining({
        fields: [
          { column: 'wheel_torque', before: '80', after: '85' },
          expect.objectContaining({ column: 'lift_notes', after: 'Front point.' }),
        ],
      }),
    ])
    const key = randomUUID()
    const done = await apply(file, shown.digest, 'leave-out', key).expect(200)
    expect(done.body).toEqual({ added: 0, changed: 1, same: shop.demo.sheets.length - 1, refused: 0 })
    expect((await apply(file, shown.digest, 'leave-out', key).expect(200)).body).toEqual(done.body)
    const changed = (await sheets()).find(({ name }) => name.startsWith('Vantrell Linnet'))
    expect(changed).toMatchObject({ version: 2, studs: { torque: { value: 85, unit: 'lbf·ft' } } })
    expect(changed?.sources.studTorque).toMatchObject({ enteredBy: people.marguerite.id, verifiedBy: null })
    expect(changed?.sources.placard?.verifiedBy).toBe(people.greta.id)
    expect((await apply(file, shown.digest).expect(409)).body.code).toBe('CSV_PREVIEW_STALE')
  })

  it('ask whether a torque of N·m stands under lbf·ft, and take it where it was read twice', async () => {
    const slipped = { wheel_torque: '150', wheel_torque_unit: 'lbf·ft', thread: 'M12×1.5' }
    const file = withCells(await exported(), 'Kestwick Moor', slipped)
    const [row] = (await preview(file)).refused
    expect(row?.faults).toEqual([
      expect.objectContaining({
        column: 'wheel_torque',
        found: '150',
        reason: expect.stringMatching(/Is it 150 N·m/),
      }),
    ])
    const sure = withCells(file, 'Kestwick Moor', { unlikely_read_twice: 'yes' })
    expect((await preview(sure)).counts).toMatchObject({ changed: 1, refused: 0 })
  })

  it('ask whether a label of 230 psi is in kPa, and name every empty cell of a figure that is there in part', async () => {
    const file = withCells(await exported(), 'Kestwick Moor', {
      label_front_psi: '230',
      thread: '',
      seat: '',
    })
    const [row] = (await preview(file)).refused
    expect(row?.faults).toEqual([
      expect.objectContaining({ column: 'label_front_psi', reason: expect.stringMatching(/kPa/) }),
    ])
    const parts = withCells(await exported(), 'Kestwick Moor', { thread: '', seat: '' })
    expect((await preview(parts)).refused[0]?.faults.map(({ column }) => column)).toEqual(['thread', 'seat'])
  })

  it('leave refused rows out, or stop where the person says so, and nothing is changed', async () => {
    const good = withCells(await exported(), 'Pellowe Finch', { lift_notes: 'Rear point.' })
    const file = withCells(good, 'Pellowe Dunnock', { system: 'sideways' })
    const { digest, counts } = await preview(file)
    expect(counts).toMatchObject({ changed: 1, refused: 1 })
    expect((await apply(file, digest, 'stop').expect(422)).body.code).toBe('CSV_ROWS_REFUSED')
    expect((await preview(file)).digest).toBe(digest)
    await apply(file, digest).expect(200)
    expect((await preview(file)).counts).toMatchObject({ changed: 0, refused: 1 })
  })

  it('of many rows of which some are wrong are taken in one go but for these', async () => {
    const [header = '', ...lines] = (await exported()).split('\r\n')
    const finch = lines.find((line) => line.startsWith('Pellowe Finch')) ?? ''
    const rows = Array.from({ length: 400 }, (_, index) => {
      const row = finch.replace(/^Pellowe Finch/, `Kind ${index}`)
      return index % 33 === 0 && index < 396 ? row.replace(',indirect,', ',sideways,') : row
    })
    const file = [header, ...rows].join('\r\n')
    const { digest, counts } = await preview(file)
    expect(counts).toEqual({ added: 388, changed: 0, same: 0, refused: 12 })
    await apply(file, digest).expect(200)
    expect((await sheets()).length).toBe(388 + shop.demo.sheets.length)
  })

  it('are imported and exported by a lead, a manager or the owner', async () => {
    const advisor = await shop.desk('ottoline')
    await advisor.get('/api/sheets.csv').expect(403)
    await advisor
      .call('post', '/api/sheets/import/preview', { 'content-type': 'application/octet-stream' })
      .send(Buffer.from('vehicle'))
      .expect(403)
  })
})
