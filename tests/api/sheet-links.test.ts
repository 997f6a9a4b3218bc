import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'

let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const once = () => ({ 'idempotency-key': randomUUID() })
const vehicleOf = async (vehicleId: string) =>
  (await owner.get(`/api/vehicles/${vehicleId}`).expect(200)).body
const without = async (description: string) => {
  const [customer] = (await owner.get('/api/customers').expect(200)).body.customers
  const content = {
    customerId: customer.customerId,
    plate: null,
    plateRegion: null,
    vin: null,
    description,
    color: null,
    notes: null,
    sheetId: null,
  }
  return (await owner.post('/api/vehicles', content, once()).expect(201)).body
}
const born = async (name: string): Promise<string> =>
  (await owner.post('/api/sheets/blank', { name }, once()).expect(201)).body.sheet.sheetId

describe('a vehicle on file without a sheet', () => {
  it('is linked when a sheet of its very kind is born, in whichever case, and no other vehicle is', async () => {
    const kind = await without('Dorrin Wicket hatch 2024')
    const similar = await without('Dorrin Wicket hatch 2023')
    const sheetId = await born('dorrin wicket HATCH 2024')
    expect(await vehicleOf(kind.vehicleId)).toMatchObject({ sheetId, version: kind.version + 1 })
    expect(await vehicleOf(similar.vehicleId)).toMatchObject({ sheetId: null, version: similar.version })
  })

  it('keeps the sheet that it has when another of the same name is born', async () => {
    const kind = await without('Dorrin Wicket van 2024')
    const first = await born('Dorrin Wicket van 2024')
    await born('Dorrin Wicket van 2024')
    expect((await vehicleOf(kind.vehicleId)).sheetId).toBe(first)
  })

  it('is linked by a file that adds its kind', async () => {
    const kind = await without('Dorrin Wicket wagon 2024')
    const text = (await owner.get('/api/sheets.csv').expect(200)).text.trimEnd()
    const [header = ''] = text.split('\r\n')
    await born('Dorrin Wicket pickup 2024')
    const blank = (await owner.get('/api/sheets.csv').expect(200)).text
      .split('\r\n')
      .find((line) => line.startsWith('Dorrin Wicket pickup 2024'))
    const file = Buffer.from(`${header}\r\n${blank?.replace('pickup', 'wagon')}\r\n`)
    const send = (path: string) =>
      owner.call('post', path, { 'content-type': 'application/octet-stream', ...once() }).send(file)
    const { digest } = (await send('/api/sheets/import/preview').expect(200)).body
    await send(`/api/sheets/import?digest=${digest}&refused=stop`).expect(200)
    expect((await vehicleOf(kind.vehicleId)).sheetId).not.toBeNull()
  })
})

describe('the orders of a sheet', () => {
  it('are found by what they wrote, though their vehicle is linked to none', async () => {
    const replay = await replayOn(shop)
    const order = freshCopy(shop.demo, 'T-2605')
    await replay.sendUntil(order.lines)
    const { body } = await owner.get(`/api/orders/${order.orderId}`).expect(200)
    const { sheet } = body.entries.findLast(({ kind }: { kind: string }) => kind === 'sheet.chosen').payload
    const { vehicleId, version, ...content } = await vehicleOf(body.vehicle.vehicleId)
    await owner
      .put(`/api/vehicles/${vehicleId}`, { ...content, sheetId: null }, { 'if-match': `"${version}"` })
      .expect(200)
    const { orders } = (await owner.get(`/api/sheets/${sheet.sheetId}/orders`).expect(200)).body
    expect(orders).toContainEqual(
      expect.objectContaining({
        orderId: order.orderId,
        version: sheet.version,
        vehicle: content.description,
      }),
    )
    const own = orders.filter(({ orderId }: { orderId: string }) => orderId === order.orderId)
    expect(own).toHaveLength(1)
  })
})
