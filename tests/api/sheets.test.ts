import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'

let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const once = (key = randomUUID()) => ({ 'idempotency-key': key })
const contentOf = (sheet: Record<string, unknown>) => {
  const { sheetId: _id, version: _version, ...content } = sheet
  return content
}

describe('specification sheets', () => {
  it('are listed in their newest version, and read with all of them', async () => {
    const { sheets } = (await owner.get('/api/sheets').expect(200)).body
    expect(sheets).toHaveLength(shop.demo.sheets.length)
    const [sheet] = sheets
    const made = await owner
      .post(
        `/api/sheets/${sheet.sheetId}/versions`,
        { ...contentOf(sheet), liftNotes: 'Use the front point.' },
        {
          ...once(),
          'if-match': '"1"',
        },
      )
      .expect(201)
    expect(made.body.sheet.version).toBe(2)
    const { versions } = (await owner.get(`/api/sheets/${sheet.sheetId}`).expect(200)).body
    expect(versions.map(({ sheet: { version } }: { sheet: { version: number } }) => version)).toEqual([2, 1])
    expect(versions[1].sheet).toEqual(sheet)
  })

  it('get a new version only on top of the one that was read', async () => {
    const { sheets } = (await owner.get('/api/sheets').expect(200)).body
    const sheet = sheets.find(({ version }: { version: number }) => version === 1)
    const send = () =>
      owner.post(`/api/sheets/${sheet.sheetId}/versions`, contentOf(sheet), { ...once(), 'if-match': '"1"' })
    const replies = await Promise.all([send(), send(), send()])
    expect(replies.map(({ status }) => status).toSorted()).toEqual([201, 412, 412])
  })

  it('are made once for one key', async () => {
    const [sheet] = (await owner.get('/api/sheets').expect(200)).body.sheets
    const key = randomUUID()
    const content = { ...contentOf(sheet), name: 'Vantrell Linnet sedan 2020' }
    const first = await owner.post('/api/sheets', content, once(key)).expect(201)
    const again = await owner.post('/api/sheets', content, once(key)).expect(201)
    expect(again.body).toEqual(first.body)
  })

  it('are written by a lead, a manager or the owner', async () => {
    const [sheet] = (await owner.get('/api/sheets').expect(200)).body.sheets
    const advisor = await shop.desk('ottoline')
    const reply = await advisor.post('/api/sheets', contentOf(sheet), once()).expect(403)
    expect(reply.body.detail).toContain('lead')
  })

  it('refuse a torque in a unit that no sheet prints, and a field that is misspelled', async () => {
    const [sheet] = (await owner.get('/api/sheets').expect(200)).body.sheets
    const content = contentOf(sheet) as { studs: Record<string, unknown> }
    const wrong = {
      ...content,
      studs: { ...content.studs, torque: { value: 80, unit: 'ft-lb' }, tourqe: 80 },
    }
    const { body } = await owner.post('/api/sheets', wrong, once()).expect(422)
    expect(body.fields).toEqual(
      expect.arrayContaining([
        expect.objectContaining({ field: 'studs.torque.unit', found: '"ft-lb"' }),
        expect.objectContaining({ field: 'studs.tourqe', found: 'an unknown field' }),
      ]),
    )
  })

  it('refuse a tire size that cannot be read, in words, and take a vehicle without a spare', async () => {
    const [sheet] = (await owner.get('/api/sheets').expect(200)).body.sheets
    const content = contentOf(sheet) as { tire: Record<string, Record<string, unknown>> }
    const withTires = (change: Record<string, unknown>) => ({
      ...content,
      tire: { ...content.tire, ...change },
    })
    const wrong = withTires({ rear: { ...content.tire.rear, size: '205/56R16 91V' }, spare: null })
    const { body } = await owner.post('/api/sheets', wrong, once()).expect(422)
    expect(body.fields).toEqual([
      {
        field: 'tire.rear.size',
        found: '"205/56R16 91V"',
        allowed: expect.stringMatching(/^an aspect of 20 to 100, in steps of five.*Read it off the sidewall/),
      },
    ])
    await owner.post('/api/sheets', withTires({ spare: null }), once()).expect(201)
  })

  it('are not found where there are none', async () => {
    expect((await owner.get(`/api/sheets/${randomUUID()}`).expect(404)).body.code).toBe('SHEET_NOT_FOUND')
    const [sheet] = (await owner.get('/api/sheets').expect(200)).body.sheets
    await owner
      .post(`/api/sheets/${randomUUID()}/versions`, contentOf(sheet), { ...once(), 'if-match': '"1"' })
      .expect(404)
  })
})

describe('settings and instruments', () => {
  it('give prices, law and what may be used today', async () => {
    const settings = (await owner.get('/api/settings').expect(200)).body
    expect(settings.settings.map(({ kind }: { kind: string }) => kind)).toContain('prices')
    expect(settings.locations).toHaveLength(2)
    const { instruments } = (await owner.get('/api/instruments').expect(200)).body
    expect(instruments.find(({ code }: { code: string }) => code === 'GA-4').quarantined).toBe(true)
    expect(instruments.find(({ code }: { code: string }) => code === 'W-03').cycles).toBe(4610)
  })
})
