import { randomUUID } from 'node:crypto'
import { sheetFigureDigest } from '@bayledger/ledger/sheet-agreement'
import {
  figureWorth,
  type SheetFigure,
  type SpecificationSheet,
  sourcesRead,
} from '@bayledger/reckoning/sheet'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, startTestApp, type TestApp, type TestTablet } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'
import { writerOn } from '../support/write-entry.ts'

let shop: TestApp
let desk: Caller
let tablet: TestTablet
let bo: Caller
beforeAll(async () => {
  shop = await startTestApp()
  desk = await shop.desk('ottoline')
  tablet = await shop.tablet()
  bo = await tablet.signIn('bo')
})
afterAll(() => shop.stop())

const once = () => ({ 'idempotency-key': randomUUID() })
const over = ({ version }: { version: number }) => ({ ...once(), 'if-match': `"${version}"` })
const begin = async (name: string): Promise<SpecificationSheet> =>
  (await desk.post('/api/sheets/blank', { name }, once()).expect(201)).body.sheet
const studs = {
  count: 5,
  thread: 'M12×1.5',
  fastener: 'nut',
  seat: 'cone',
  torque: { value: 107, unit: 'N·m' },
  handTurns: 7,
  makersSequence: null,
  lockingFastener: false,
  retorqueMiles: { from: 50, to: 100 },
} as const
const torque = (change: object = {}) => ({
  figure: 'studTorque',
  studs: { ...studs, ...change },
  kind: 'maker-manual',
  reference: 'Service book, wheels, page 4',
})
const tire = { size: '205/55R16 91V', loadClass: 'SL', sidewallMaximumPsi: 51 }
const label = {
  figure: 'placard',
  placard: { front: { psi: 33, kPa: 230 }, rear: { psi: 33, kPa: 230 }, spare: null },
  tire: { front: tire, rear: tire, spare: null },
  spare: 'none',
  kind: 'placard-photo',
  reference: 'Label in the driver’s door',
}
const enter = (caller: Caller, sheet: SpecificationSheet, entered: object, sure: string[] = []) =>
  caller.post(`/api/sheets/${sheet.sheetId}/figures`, { entered, sure }, over(sheet))
const tokenOf = async (
  sheet: SpecificationSheet,
  figure: SheetFigure,
  { id, pin }: { id: string; pin: string },
  caller = bo,
) => {
  const own = randomUUID()
  const digest = sheetFigureDigest(sheet, figure) ?? ''
  const agreesTo = { orderId: own, entryId: own, kind: 'sheet-figure', digest }
  return (await caller.post('/api/second-person', { staffId: id, pin, agreesTo })).body.token
}
const verify = (
  sheet: SpecificationSheet,
  figure: SheetFigure,
  staffId: string,
  token: string,
  caller = bo,
) => caller.post(`/api/sheets/${sheet.sheetId}/verified-figures`, { figure, staffId, token }, over(sheet))

describe('a sheet that is born in the bay', () => {
  it('begins blank, gets each figure from its source, and each is verified by somebody else', async () => {
    const blank = await begin('Dorrin Wicket hatch 2024')
    const worth = (sheet: SpecificationSheet) =>
      (['placard', 'studTorque', 'frequency'] as const).map((figure) => figureWorth(sheet, figure))
    expect(worth(blank)).toEqual(['missing', 'missing', 'missing'])
    const labeled = (await enter(bo, blank, label).expect(201)).body.sheet
    const torqued = (await enter(bo, labeled, torque()).expect(201)).body.sheet
    expect(worth(torqued)).toEqual(['label', 'entered', 'missing'])
    expect(torqued.sources.studTorque).toMatchObject({ enteredBy: people.bo.id, verifiedBy: null })

    const token = await tokenOf(torqued, 'studTorque', people.greta)
    const verified = (await verify(torqued, 'studTorque', people.greta.id, token).expect(201)).body.sheet
    expect(worth(verified)).toEqual(['label', 'verified', 'missing'])
    const closed = (await enter(bo, verified, { figure: 'no-sensors', system: 'indirect' }).expect(201)).body
      .sheet
    expect(closed).toMatchObject({ version: 5, system: 'indirect', sensor: null })
    expect((await enter(bo, closed, torque({ handTurns: 8 })).expect(409)).body.code).toBe('FIGURE_VERIFIED')
    const stored = (await bo.get(`/api/sheets/${blank.sheetId}`).expect(200)).body.versions
    expect(stored).toHaveLength(5)
  })

  it('takes no verification by whoever entered the figure, nor of what somebody remembers', async () => {
    const blank = await begin('Dorrin Wicket van 2024')
    const own = (await enter(await tablet.signIn('greta'), blank, torque()).expect(201)).body.sheet
    const byGreta = await tokenOf(own, 'studTorque', people.greta)
    bo = await tablet.signIn('bo')
    const again = await tokenOf(own, 'studTorque', people.greta)
    expect((await verify(own, 'studTorque', people.greta.id, again ?? byGreta)).body.code).toBe(
      'SECOND_PERSON_REFUSED',
    )
    const remembered = (await enter(bo, own, { ...torque(), kind: 'memory' }).expect(201)).body.sheet
    expect(figureWorth(remembered, 'studTorque')).toBe('memory')
    const token = await tokenOf(remembered, 'studTorque', people.greta)
    await verify(remembered, 'studTorque', people.greta.id, token).expect(422)
  })

  it('has a source and a verifier for learning and the other figures too, and a second person at the desk verifies them', async () => {
    const blank = await begin('Dorrin Wicket pickup 2024')
    const relearn = {
      method: 'stationary',
      entry: 'Key on, hold the button.',
      confirmation: 'One beep a wheel.',
      exit: 'Key off.',
      timeLimitMinutes: 5,
      parkMinutes: null,
      driveMinutes: null,
      driveSpeedMph: null,
      knownTrap: null,
    }
    const learning = { figure: 'relearn', relearn, kind: 'maker-manual', reference: 'Owner’s book, page 212' }
    const entered = (await enter(bo, blank, learning).expect(201)).body.sheet
    expect(entered.sources.relearn).toMatchObject({ enteredBy: people.bo.id, verifiedBy: null })
    expect(figureWorth(entered, 'relearn')).toBe('entered')

    const owner = await shop.desk('marguerite')
    const own = await tokenOf(entered, 'relearn', people.bo)
    expect((await verify(entered, 'relearn', people.bo.id, own ?? randomUUID())).status).toBe(422)
    const token = await tokenOf(entered, 'relearn', people.marguerite, owner)
    const other = await verify(entered, 'studTorque', people.marguerite.id, token, owner)
    expect(other.status).toBe(422)
    const verified = (await verify(entered, 'relearn', people.marguerite.id, token, owner).expect(201)).body
      .sheet
    expect(figureWorth(verified, 'relearn')).toBe('verified')
    expect((await enter(bo, verified, learning).expect(409)).body.code).toBe('FIGURE_VERIFIED')

    const { sheetId: _id, version: _version, sources, ...figures } = verified
    const save = (sheet: SpecificationSheet, change: object, read: object = {}) =>
      owner.post(
        `/api/sheets/${sheet.sheetId}/versions`,
        { ...figures, ...change, sources: { ...sourcesRead(sources), ...read }, verified: {} },
        over(sheet),
      )
    const manual = { kind: 'maker-manual', reference: 'Owner’s book, page 8' }
    const more = { system: 'direct', liftNotes: 'Use the front point.' }
    const sourced = (await save(verified, more, { system: manual, lifting: manual }).expect(201)).body.sheet
    expect(sourced.sources).toMatchObject({
      relearn: { verifiedBy: people.marguerite.id },
      system: { enteredBy: people.marguerite.id, verifiedBy: null },
      lifting: { enteredBy: people.marguerite.id, verifiedBy: null },
    })
    const byBo = await tokenOf(sourced, 'lifting', people.greta)
    const lifted = (await verify(sourced, 'lifting', people.greta.id, byBo).expect(201)).body.sheet
    expect(lifted.sources.lifting.verifiedBy).toBe(people.greta.id)
    const changed = (await save(lifted, { ...more, relearn: { ...relearn, timeLimitMinutes: 10 } })).body
      .sheet
    expect(changed.sources.relearn).toMatchObject({ verifiedBy: null, enteredBy: people.marguerite.id })
    const unsourced = await save(changed, { ...more, relearn: 'missing' }, { relearn: manual })
    expect(unsourced.body.fields).toEqual([expect.objectContaining({ field: 'sources.relearn' })])
  })

  it('takes from the bay how a vehicle watches its tires and where it is lifted, and changes no verified figure by them', async () => {
    const manual = { kind: 'maker-manual', reference: 'Owner’s book, page 8' }
    const watches = {
      figure: 'system',
      system: 'direct',
      pressureDisplay: true,
      locatesWheels: false,
      spareMonitored: false,
      warnAtPsi: { front: 26, rear: 26, spare: null },
      ...manual,
    }
    const blank = await begin('Dorrin Wicket cabriolet 2024')
    const watching = (await enter(bo, blank, watches).expect(201)).body.sheet
    expect(watching).toMatchObject({ system: 'direct', sensor: 'missing', warnAtPsi: { front: 26 } })
    expect(figureWorth(watching, 'system')).toBe('entered')
    const lifting = { figure: 'lifting', liftNotes: 'Front: behind the notch.', ...manual }
    const lifted = (await enter(bo, watching, lifting).expect(201)).body.sheet
    const token = await tokenOf(lifted, 'lifting', people.greta)
    const verified = (await verify(lifted, 'lifting', people.greta.id, token).expect(201)).body.sheet
    expect(figureWorth(verified, 'lifting')).toBe('verified')
    expect((await enter(bo, verified, lifting).expect(409)).body.code).toBe('FIGURE_VERIFIED')

    const other = (await enter(bo, verified, { figure: 'no-sensors', system: 'none' }).expect(201)).body.sheet
    expect(other).toMatchObject({ system: 'none', sensor: null })
    expect(other.sources.system ?? null).toBeNull()
    const again = (await enter(bo, other, watches).expect(201)).body.sheet
    const systemToken = await tokenOf(again, 'system', people.greta)
    const sure = (await verify(again, 'system', people.greta.id, systemToken).expect(201)).body.sheet
    const refused = await enter(bo, sure, { figure: 'no-sensors', system: 'none' }).expect(409)
    expect(refused.body.code).toBe('FIGURE_VERIFIED')
    const empty = await enter(bo, sure, { ...lifting, liftNotes: ' ' }).expect(422)
    expect(empty.body.fields[0].field).toContain('liftNotes')
  })

  it('asks about N·m under lbf·ft, refuses a label of 230 psi, and loses no race', async () => {
    const blank = await begin('Dorrin Wicket wagon 2024')
    const slipped = torque({ torque: { value: 150, unit: 'lbf·ft' } })
    const asked = await enter(bo, blank, slipped).expect(422)
    expect(asked.body.code).toBe('VALUE_DOUBTFUL')
    expect(asked.body.fields[0]).toMatchObject({
      field: 'studs.torque.value',
      allowed: expect.stringMatching(/Is it 150 N·m/),
    })
    const kilopascals = { ...label, placard: { ...label.placard, front: { psi: 230, kPa: null } } }
    expect((await enter(bo, blank, kilopascals).expect(422)).body.fields[0].field).toContain('psi')
    const typed = { psi: 33.4, kPa: null, typed: { value: 2.3, unit: 'bar' } }
    const bar = (front: object) => ({ ...label, placard: { front, rear: typed, spare: null } })
    expect((await enter(bo, blank, bar({ ...typed, psi: 35 })).expect(422)).body.fields[0].field).toContain(
      'placard.front.psi',
    )
    await enter(bo, await begin('Dorrin Wicket coupe 2024'), bar(typed)).expect(201)
    await enter(bo, blank, slipped, ['studs.torque.value']).expect(201)
    const late = await enter(bo, blank, label).expect(412)
    expect(late.body).toMatchObject({ code: 'VERSION_STALE', current: { sheet: { version: 2 } } })
  })

  it('brings its figures to the steps of an order under way, which names itself among the orders of the sheet', async () => {
    const replay = await replayOn(shop)
    const order = freshCopy(shop.demo, 'T-2605')
    await replay.sendUntil(order.lines)
    const state = (await desk.get(`/api/orders/${order.orderId}`).expect(200)).body
    const chosen = state.entries.findLast(({ kind }: { kind: string }) => kind === 'sheet.chosen').payload
      .sheet
    const owner = await shop.desk('marguerite')
    const listed = (await owner.get(`/api/sheets/${chosen.sheetId}/orders`).expect(200)).body.orders
    expect(listed).toContainEqual(
      expect.objectContaining({ orderId: order.orderId, version: chosen.version }),
    )
    const [newest] = (await owner.get(`/api/sheets/${chosen.sheetId}`).expect(200)).body.versions
    expect(newest.sheet.version).toBe(chosen.version)
    const write = writerOn(shop, order.orderId)
    await write(bo, 'sheet.chosen', { sheet: newest.sheet })
    const after = (await desk.get(`/api/orders/${order.orderId}`).expect(200)).body.entries
    const plans = (entries: { kind: string }[]) => entries.filter(({ kind }) => kind === 'plan.issued').length
    expect(plans(state.entries)).toBeGreaterThan(0)
    expect(plans(after)).toBe(plans(state.entries) + 1)
  })
})
