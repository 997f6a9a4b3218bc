import { randomUUID } from 'node:crypto'
import type { Customer, CustomerContent } from '@bayledger/contract/customers'
import type { Merge } from '@bayledger/contract/merges'
import type { Vehicle } from '@bayledger/contract/vehicles'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { readZip } from '../support/read-zip.ts'
import { type Replay, replayOn } from '../support/replay-order.ts'
import { writerOn } from '../support/write-entry.ts'

let shop: TestApp
let desk: Caller
let orderId: string
let replay: Replay
let owner: Customer
let car: Vehicle
beforeAll(async () => {
  shop = await startTestApp()
  replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
  const order = freshCopy(shop.demo, 'T-2602')
  orderId = order.orderId
  await replay.sendUntil(order.lines, ({ draft }) => draft.kind === 'diagnosis.issued')
  const opened = await readOrder()
  owner = opened.customer
  car = opened.vehicle
})
afterAll(() => shop.stop())

const once = () => ({ 'idempotency-key': randomUUID() })
const readOrder = async () => (await desk.get(`/api/orders/${orderId}`).expect(200)).body
const addCustomer = async (content: Partial<CustomerContent>): Promise<Customer> =>
  (
    await desk
      .post(
        '/api/customers',
        {
          ...{ name: 'A. Name', phone: null, email: null, language: 'en' },
          ...{ mayText: false, mayEmail: false, mayCall: false, ...content },
        },
        once(),
      )
      .expect(201)
  ).body
const addVehicle = async (customerId: string, content: object): Promise<Vehicle> => {
  const empty = { plate: null, plateRegion: null, vin: null, color: null, notes: null, sheetId: null }
  const vehicle = { description: 'Marlowe Tern wagon 2019', ...empty, customerId, ...content }
  return (await desk.post('/api/vehicles', vehicle, once()).expect(201)).body
}
const customer = async (id: string): Promise<Customer> =>
  (await desk.get(`/api/customers/${id}`).expect(200)).body
const vehicle = async (id: string): Promise<Vehicle> =>
  (await desk.get(`/api/vehicles/${id}`).expect(200)).body
const mergeInto = (into: Customer, other: Customer, take: readonly string[] = []) =>
  desk.post(
    `/api/customers/${into.customerId}/merges`,
    { mergedId: other.customerId, mergedVersion: other.version, take },
    { 'if-match': `"${into.version}"` },
  )
const undo = (merge: Merge) => desk.post(`/api/merges/${merge.mergeId}/undo`)
const hits = async (q: string) =>
  (await desk.get(`/api/search?q=${encodeURIComponent(q)}`).expect(200)).body.hits
const vehiclesOf = async (id: string): Promise<string[]> =>
  (await desk.get(`/api/vehicles?customerId=${id}`).expect(200)).body.vehicles.map(
    ({ vehicleId }: Vehicle) => vehicleId,
  )

describe('two records of one customer, merged while an order is open', () => {
  let survivor: Customer
  let second: Vehicle
  let merge: Merge

  it('are one: the order, the vehicles and the consents are the survivor’s', async () => {
    survivor = await addCustomer({ name: 'Perpetua Lindqvist', phone: '+1 555 017 4400', language: 'es' })
    second = await addVehicle(survivor.customerId, { plate: 'PLQ 1' })
    const choice = { purpose: 'retorque', channel: 'email', allowed: true }
    await desk.put(`/api/customers/${owner.customerId}/message-choices`, choice).expect(204)
    merge = (await mergeInto(survivor, owner, ['email', 'mayEmail']).expect(201)).body
    expect(merge).toMatchObject({ mergedName: owner.name, madeBy: 'Ottoline Pask', mayUndo: true })

    const order = await readOrder()
    expect(order.customer).toMatchObject({
      ...{ customerId: survivor.customerId, name: survivor.name, phone: survivor.phone },
      ...{ email: owner.email, mayEmail: owner.mayEmail, language: 'es' },
    })
    expect(order.vehicle.customerId).toBe(survivor.customerId)
    expect((await vehiclesOf(survivor.customerId)).toSorted()).toEqual(
      [car.vehicleId, second.vehicleId].toSorted(),
    )
    const { body: page } = await desk.get(`/api/vehicles/${car.vehicleId}/page`).expect(200)
    expect(page).toMatchObject({
      customer: { customerId: survivor.customerId },
      visits: [{ ofThisOwner: true }],
    })
    const { body: messages } = await desk.get(`/api/orders/${orderId}/messages`).expect(200)
    expect(messages.choices).toContainEqual(choice)
    const { body: floor } = await desk.get('/api/floor').expect(200)
    expect(floor.rows).toMatchObject([{ orderId, customerName: survivor.name }])
  })

  it('are one in every search, and the old address leads to the survivor', async () => {
    expect(await customer(owner.customerId)).toMatchObject({ customerId: survivor.customerId })
    const found = await hits(owner.name)
    expect(new Set(found.map(({ customerId }: Customer) => customerId))).toEqual(
      new Set([survivor.customerId]),
    )
    expect(found.map(({ customerName }: { customerName: string }) => customerName)).not.toContain(owner.name)
    const { body: all } = await desk.get('/api/customers').expect(200)
    expect(all.customers.map(({ customerId }: Customer) => customerId)).not.toContain(owner.customerId)
  })

  it('take entries as before, and an edit of the merged record is told where to go', async () => {
    const written = await writerOn(shop, orderId)(desk, 'stay.changed', { waitsHere: true, promisedAt: null })
    expect(written).toMatchObject({ result: 'accepted' })
    const { customerId, version, ...content } = owner
    const edit = { ...content, name: 'P. Roe' }
    const late = await desk
      .put(`/api/customers/${customerId}`, edit, { 'if-match': `"${version}"` })
      .expect(409)
    expect(late.body).toMatchObject({ code: 'RECORD_MERGED', sent: { name: 'P. Roe' } })
    expect(late.body.detail).toContain('Perpetua Lindqvist')
  })

  it('are two again as they were, but for what was changed since', async () => {
    const { customerId, version, ...content } = await customer(survivor.customerId)
    const edit = { ...content, phone: '+1 555 017 4499' }
    await desk.put(`/api/customers/${customerId}`, edit, { 'if-match': `"${version}"` }).expect(200)
    const undone = (await undo(merge).expect(200)).body
    expect(undone).toMatchObject({ undoneBy: 'Ottoline Pask', mayUndo: false })
    expect(await customer(owner.customerId)).toEqual({ ...owner, version: expect.any(Number) })
    expect(await customer(survivor.customerId)).toEqual({
      ...{ ...survivor, phone: '+1 555 017 4499' },
      version: expect.any(Number),
    })
    expect((await readOrder()).customer.customerId).toBe(owner.customerId)
    expect(await vehiclesOf(survivor.customerId)).toEqual([second.vehicleId])
    expect(await vehiclesOf(owner.customerId)).toContain(car.vehicleId)
    expect((await hits(owner.name))[0]).toMatchObject({ customerName: owner.name })
    const { body } = await desk.get(`/api/customers/${owner.customerId}/merges`).expect(200)
    expect(body.merges).toMatchObject([{ mergedName: owner.name, undoneAt: expect.any(String) }])
    expect((await undo(merge).expect(409)).body.detail).toContain('before you')
  })
})

describe('a merge', () => {
  it('with itself is refused, and so is one over a record that somebody just saved', async () => {
    const one = await addCustomer({ name: 'Wilhelmina Ochre' })
    const other = await addCustomer({ name: 'W. Ochre' })
    expect((await mergeInto(one, one).expect(409)).body).toMatchObject({ code: 'MERGE_REFUSED' })
    const { customerId, version, ...content } = other
    await desk.put(
      `/api/customers/${customerId}`,
      { ...content, name: 'W. J. Ochre' },
      { 'if-match': `"${version}"` },
    )
    const stale = await mergeInto(one, other).expect(412)
    expect(stale.body).toMatchObject({ code: 'VERSION_STALE', current: { name: 'W. J. Ochre' } })
  })

  it('by two people at once happens once, whichever way round each of them does it', async () => {
    const one = await addCustomer({ name: 'Solveig Tamarind' })
    const other = await addCustomer({ name: 'S. Tamarind' })
    const replies = await Promise.all([mergeInto(one, other), mergeInto(other, one), mergeInto(one, other)])
    expect(replies.map(({ status }) => status).toSorted()).toEqual([201, 409, 409])
    expect(replies.find(({ status }) => status === 409)?.body).toMatchObject({ code: 'RECORD_MERGED' })
    expect(new Set((await hits('tamarind')).map(({ customerId }: Customer) => customerId)).size).toBe(1)
  })

  it('of a merged record leads on to the last one, and the chain is undone from its end', async () => {
    const names = ['Ida Farthing', 'I. Farthing', 'Ida M. Farthing']
    const [a, b, c] = await Promise.all(names.map((name) => addCustomer({ name })))
    if (!a || !b || !c) throw new Error('three customers')
    const own = await addVehicle(a.customerId, { plate: 'FRT 3' })
    const first: Merge = (await mergeInto(b, a, ['name']).expect(201)).body
    const second: Merge = (await mergeInto(c, await customer(b.customerId), ['name']).expect(201)).body
    expect(await customer(a.customerId)).toMatchObject({ customerId: c.customerId, name: 'Ida Farthing' })
    expect(await vehicle(own.vehicleId)).toMatchObject({ customerId: c.customerId })
    expect((await undo(first).expect(409)).body.detail).toContain('later merge first')
    await undo(second).expect(200)
    expect(await customer(a.customerId)).toMatchObject({ customerId: b.customerId, name: 'Ida Farthing' })
    expect(await customer(c.customerId)).toMatchObject({ name: 'Ida M. Farthing' })
    await undo(first).expect(200)
    expect(await customer(a.customerId)).toMatchObject({ customerId: a.customerId, name: 'Ida Farthing' })
    expect(await customer(b.customerId)).toMatchObject({ name: 'I. Farthing' })
  })
})

/** The first line of another order of a vehicle, as a comeback of the one above. */
const openComeback = async (vehicleId: string, customerId: string) => {
  const [line] = freshCopy(shop.demo, 'T-2602').lines
  if (line?.draft.kind !== 'order.opened') throw new Error('T-2602 was never opened')
  const payload = { ...line.draft.payload, vehicleId, customerId, comebackOf: orderId }
  return replay.send({ ...line, draft: { ...line.draft, payload } })
}

describe('two records of one vehicle', () => {
  // 49 CFR 565.15(c), sample: the check digit of 1M8GDM9A_KP042788 is X.
  const vin = '1M8GDM9AXKP042788'

  it('are one with the VIN of either, its visits, and what the former owner left stays hidden', async () => {
    const buyer = await addCustomer({ name: 'Basil Underhay', phone: '+1 555 017 4411' })
    const again = await addVehicle(buyer.customerId, { plate: 'BUH 7', vin })
    expect(await openComeback(again.vehicleId, owner.customerId)).toMatchObject({
      code: 'VEHICLE_OF_ANOTHER_CUSTOMER',
    })
    expect(await openComeback(again.vehicleId, buyer.customerId)).toMatchObject({
      code: 'COMEBACK_OF_ANOTHER_VEHICLE',
    })
    const path = `/api/vehicles/${car.vehicleId}`
    const merged = await desk
      .post(
        `${path}/merges`,
        { mergedId: again.vehicleId, mergedVersion: again.version, take: ['vin', 'plate', 'customerId'] },
        { 'if-match': `"${car.version}"` },
      )
      .expect(201)
    expect(await vehicle(again.vehicleId)).toMatchObject({ vehicleId: car.vehicleId, vin, plate: 'BUH 7' })
    const { body: page } = await desk.get(`/api/vehicles/${again.vehicleId}/page`).expect(200)
    expect(page).toMatchObject({
      customer: { customerId: buyer.customerId },
      visits: [{ ofThisOwner: false, orderId: null }],
    })
    expect(JSON.stringify(page)).not.toContain(owner.name)
    expect(new Set((await hits('BUH 7')).map(({ vehicleId }: Vehicle) => vehicleId))).toEqual(
      new Set([car.vehicleId]),
    )
    const { body: last } = await desk.get(`/api/vehicles/${again.vehicleId}/last-odometer`).expect(200)
    expect(last.last).not.toBeNull()
    expect(await openComeback(again.vehicleId, buyer.customerId)).toMatchObject({ result: 'accepted' })

    await undo(merged.body).expect(200)
    expect(await vehicle(car.vehicleId)).toEqual({ ...car, version: expect.any(Number) })
    expect(await vehicle(again.vehicleId)).toEqual({ ...again, version: expect.any(Number) })
    // The order that was opened for the car as one stays with the record that it names.
    const { body: apart } = await desk.get(`/api/vehicles/${again.vehicleId}/page`).expect(200)
    expect(apart.visits).toMatchObject([{ isComeback: true }])
  })
})

describe('a customer’s own data', () => {
  it('are all that is kept under each of their records, and nothing of another owner', async () => {
    const other = await addCustomer({ name: 'Perpetua L. Roe', phone: '+1 555 017 4422' })
    await mergeInto(await customer(owner.customerId), other).expect(201)
    const choice = { purpose: 'recall', channel: 'call', allowed: false }
    await desk.put(`/api/customers/${owner.customerId}/message-choices`, choice).expect(204)
    const { body: agreed } = await desk.get(`/api/customers/${owner.customerId}/message-choices`).expect(200)
    expect(agreed.choices).toContainEqual({ ...choice, askedAt: shop.clock.now().toISOString() })
    expect(agreed.choices).toContainEqual({
      purpose: 'deferred',
      channel: 'text',
      allowed: false,
      askedAt: null,
    })
    expect(agreed.choices).toHaveLength(12)

    const path = `/api/customers/${other.customerId}/own-data`
    await desk.post(path).expect(403)
    const marguerite = await shop.desk('marguerite')
    const { body: zip } = await marguerite.post(path).responseType('blob').expect(201)
    const files = readZip(zip)
    const { data } = JSON.parse(String(files.get('data.json')))
    const values = data.map(({ value }: { value: string }) => value)
    const { entries, sides } = await readOrder()
    expect(values).toEqual(expect.arrayContaining([owner.name, other.name, other.phone, car.plate]))
    expect(values).toEqual(expect.arrayContaining(sides.map(({ text }: { text: string }) => text)))
    expect(data.filter(({ what }: { what: string }) => what === 'order opened')).toHaveLength(1)
    expect(entries.length).toBeGreaterThan(5)
    expect(JSON.stringify(data)).not.toMatch(/Basil Underhay|BUH 7|Wilhelmina/)
    expect(String(files.get('data.csv'))).toContain('complaint recorded')
    expect(String(files.get('data.csv'))).toContain("'+1 555 017 4422")
    const { body: log } = await marguerite.get(path).expect(200)
    expect(log.copies).toMatchObject([{ by: 'Marguerite Ashby-Bell' }])
  })
})
