import { randomUUID } from 'node:crypto'
import { sheetFigureDigest } from '@bayledger/ledger/sheet-agreement'
import type { CompleteSheet, SafetyFigure } from '@bayledger/reckoning/sheet'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'
import { sheetContent } from '../support/sheet-content.ts'

let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const once = (key = randomUUID()) => ({ 'idempotency-key': key })
describe('specification sheets', () => {
  it('are listed in their newest version, and read with all of them', async () => {
    const { sheets } = (await owner.get('/api/sheets').expect(200)).body
    expect(sheets).toHaveLength(shop.demo.sheets.length)
    const [sheet] = sheets
    const made = await owner
      .post(
        `/api/sheets/${sheet.sheetId}/versions`,
        { ...sheetContent(sheet), liftNotes: 'Use the front point.' },
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
      owner.post(`/api/sheets/${sheet.sheetId}/versions`, sheetContent(sheet), {
        ...once(),
        'if-match': '"1"',
      })
    const replies = await Promise.all([send(), send(), send()])
    expect(replies.map(({ status }) => status).toSorted()).toEqual([201, 412, 412])
  })

  it('are made once for one key', async () => {
    const [sheet] = (await owner.get('/api/sheets').expect(200)).body.sheets
    const key = randomUUID()
    const content = { ...sheetContent(sheet), name: 'Vantrell Linnet sedan 2020' }
    const first = await owner.post('/api/sheets', content, once(key)).expect(201)
    const again = await owner.post('/api/sheets', content, once(key)).expect(201)
    expect(again.body).toEqual(first.body)
  })

  it('are written by a lead, a manager or the owner', async () => {
    const [sheet] = (await owner.get('/api/sheets').expect(200)).body.sheets
    const advisor = await shop.desk('ottoline')
    const reply = await advisor.post('/api/sheets', sheetContent(sheet), once()).expect(403)
    expect(reply.body.detail).toContain('lead')
  })

  it('refuse a torque in a unit that no sheet prints, and a field that is misspelled', async () => {
    const [sheet] = (await owner.get('/api/sheets').expect(200)).body.sheets
    const content = sheetContent(sheet)
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
    const content = sheetContent(sheet)
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
      .post(`/api/sheets/${randomUUID()}/versions`, sheetContent(sheet), { ...once(), 'if-match': '"1"' })
      .expect(404)
  })
})

describe('who entered and who verified a figure of a sheet', () => {
  const linnet = async () => {
    const { sheets } = (await owner.get('/api/sheets').expect(200)).body
    return sheets.find(({ sheetId }: { sheetId: string }) => sheetId === shop.demo.sheets[0]?.sheetId)
  }
  const withTorque = (sheet: CompleteSheet, value: number) => ({
    ...sheetContent(sheet),
    studs: { ...sheet.studs, torque: { value, unit: 'lbf·ft' } },
  })
  type Sent = Parameters<typeof sheetFigureDigest>[0]
  const figureOf = (content: unknown, figure: SafetyFigure = 'studTorque') =>
    sheetFigureDigest(content as Sent, figure) ?? ''
  const tokenFor = async (digest: string, { id, pin }: { id: string; pin: string } = people.greta) => {
    const own = randomUUID()
    const agreesTo = { orderId: own, entryId: own, kind: 'sheet-figure', digest }
    return (await owner.post('/api/second-person', { staffId: id, pin, agreesTo }).expect(201)).body.token
  }
  const save = async (sheet: { sheetId: string; version: number }, content: object) =>
    owner.post(`/api/sheets/${sheet.sheetId}/versions`, content, {
      ...once(),
      'if-match': `"${sheet.version}"`,
    })

  it('cannot be sent: a bare id of a person is an unknown field', async () => {
    const sheet = await linnet()
    const { status, body } = await save(sheet, { ...sheetContent(sheet), sources: sheet.sources })
    expect(status).toBe(422)
    expect(body.fields).toEqual(
      expect.arrayContaining([
        expect.objectContaining({ field: 'sources.studTorque.enteredBy', found: 'an unknown field' }),
        expect.objectContaining({ field: 'sources.studTorque.verifiedBy', found: 'an unknown field' }),
      ]),
    )
  })

  it('is who is signed in, and nobody, where a figure changes; a figure that stays keeps both', async () => {
    const sheet = await linnet()
    const { body } = await save(sheet, withTorque(sheet, 85))
    expect(body.sheet.sources.studTorque).toMatchObject({ enteredBy: people.marguerite.id, verifiedBy: null })
    expect(body.sheet.sources.placard).toEqual(sheet.sources.placard)
  })

  it('is a second person whose PIN was typed for this very figure', async () => {
    const sheet = await linnet()
    const content = withTorque(sheet, 90)
    const verifiedBy = async (staffId: string, token: string, sent: object = content) =>
      (await save(sheet, { ...sent, verified: { studTorque: { staffId, token } } })).body
    const refused = { status: 422, code: 'SECOND_PERSON_REFUSED' }
    expect(await verifiedBy(people.greta.id, 'A'.repeat(43))).toMatchObject(refused)
    const token = await tokenFor(figureOf(content))
    expect(await verifiedBy(people.bo.id, token)).toMatchObject(refused)
    expect(await verifiedBy(people.greta.id, token, withTorque(sheet, 91))).toMatchObject(refused)
    expect(await verifiedBy(people.greta.id, await tokenFor(figureOf(content, 'placard')))).toMatchObject(
      refused,
    )
    shop.clock.advance(10 * 60_000 + 1)
    expect(await verifiedBy(people.greta.id, token)).toMatchObject(refused)
    expect(
      (await verifiedBy(people.greta.id, await tokenFor(figureOf(content)))).sheet.sources.studTorque,
    ).toEqual({
      kind: 'maker-manual',
      reference: sheet.sources.studTorque.reference,
      enteredBy: people.marguerite.id,
      verifiedBy: people.greta.id,
    })
  })

  it('is never an advisor, nor who entered it', async () => {
    const sheet = await linnet()
    const content = withTorque(sheet, 95)
    const digest = figureOf(content)
    const ask = ({ id, pin }: { id: string; pin: string }) => {
      const own = randomUUID()
      const agreesTo = { orderId: own, entryId: own, kind: 'sheet-figure', digest }
      return owner.post('/api/second-person', { staffId: id, pin, agreesTo })
    }
    await ask(people.devin).expect(422)
    const { token } = (await ask(people.marguerite).expect(201)).body
    const own = { studTorque: { staffId: people.marguerite.id, token } }
    expect((await save(sheet, { ...content, verified: own })).body.code).toBe('SECOND_PERSON_REFUSED')
  })

  it('counts in an order only as it is on file: a sheet that says more is refused', async () => {
    const replay = await replayOn(shop)
    const { lines } = freshCopy(shop.demo, 'T-2602')
    await replay.sendUntil(lines, ({ draft }) => draft.kind === 'sheet.chosen')
    const line = lines.find(({ draft }) => draft.kind === 'sheet.chosen')
    if (line?.draft.kind !== 'sheet.chosen') throw new Error('T-2602 has a sheet')
    const { sheet } = line.draft.payload
    const forged = {
      ...sheet,
      sources: {
        ...sheet.sources,
        placard: sheet.sources.placard && { ...sheet.sources.placard, verifiedBy: people.bo.id },
      },
    }
    const other = { ...line, draft: { ...line.draft, id: randomUUID(), payload: { sheet: forged } } }
    expect(await replay.send(other)).toMatchObject({ result: 'refused', code: 'SHEET_NOT_ON_FILE' })
    const unknown = { ...line.draft, id: randomUUID(), payload: { sheet: { ...sheet, sheetId: 'no id' } } }
    expect(await replay.send({ ...line, draft: unknown })).toMatchObject({ code: 'SHEET_NOT_ON_FILE' })
    expect(await replay.send(line)).toMatchObject({ result: 'accepted' })
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
