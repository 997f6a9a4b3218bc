import { randomUUID } from 'node:crypto'
import type { Caller, TestApp } from './app.ts'
import { freshLines } from './fresh-copy.ts'
import { attachedPhoto, drawnJpeg } from './pictures.ts'
import type { Replay } from './replay-order.ts'
import { rowsOf } from './rows-of.ts'
import { closeDayHere } from './verified-here.ts'
import { sideOf, writerOn } from './write-entry.ts'

/** Words that are nowhere else in the demo. */
export const marks = {
  name: 'Zephyrine Quillmarker',
  phone: '+1 555 017 9913',
  email: 'quillmarker@example.com',
  plate: 'ZQM 913',
  notes: 'parks beside the zeppelin',
}
type Shop = { readonly shop: TestApp; readonly desk: Caller }

export type MarkedPerson = {
  readonly customerId: string
  /** An order that was handed back with a sealed report. */
  readonly orderId: string
  /** The digest of the photo that has arrived; a second one has not. */
  readonly photo: string
  /** A write-up that was begun for somebody else. */
  readonly othersDraft: string
}

/** A customer of the demo who is everywhere where a person can be, under marks. `desk` is a person who may write. */
export const addMarkedPerson = async (shop: TestApp, replay: Replay, desk: Caller): Promise<MarkedPerson> => {
  const order = shop.demo.orders.find((one) => one.number === 'T-2601')
  const opened = order?.lines[0]?.draft
  if (opened?.kind !== 'order.opened') throw new Error('T-2601 was never opened')
  const { customerId } = opened.payload
  const card = shop.demo.customers.find(({ id }) => id === customerId)
  await mark(desk, customerId)
  const written = { orderId: order?.orderId, lines: [...(order?.lines ?? []), order?.end?.handBack] }
  const fresh = freshLines(JSON.parse(JSON.stringify(written).replaceAll(card?.name ?? '', marks.name)))
  const { orderId } = fresh
  await replay.sendUntil(fresh.lines.slice(0, -1))
  const photo = await attachPhotos({ shop, desk }, orderId)
  await desk.post(`/api/orders/${orderId}/reports`, { entryId: randomUUID() }).expect(201)
  await replay.sendUntil(fresh.lines.slice(-1))
  await closeDayHere(shop, '2026-01-12')
  const othersDraft = randomUUID()
  await spread({ shop, desk }, { customerId, orderId, othersDraft })
  return { customerId, orderId, photo, othersDraft }
}

/** One photo that arrives, and one that does not. */
const attachPhotos = async ({ shop, desk }: Shop, orderId: string): Promise<string> => {
  const bytes = await drawnJpeg()
  const write = writerOn(shop, orderId)
  const { digest } = attachedPhoto(bytes)
  await write(desk, 'photo.attached', attachedPhoto(bytes))
  await write(desk, 'photo.attached', attachedPhoto(Buffer.from('still on the tablet')))
  await desk
    .call('put', `/api/photos/${digest}/pieces/0`, { 'content-type': 'application/octet-stream' })
    .send(bytes)
    .expect(200)
  return digest
}

/** Puts the marks on the card and the vehicle of the order. */
const mark = async (desk: Caller, customerId: string): Promise<void> => {
  const { body: card } = await desk.get(`/api/customers/${customerId}`).expect(200)
  const { customerId: _id, version, ...content } = card
  const { name, phone, email } = marks
  const saved = { ...content, name, phone, email, mayEmail: true }
  await desk.put(`/api/customers/${customerId}`, saved, { 'if-match': `"${version}"` }).expect(200)
  const { body: listed } = await desk.get(`/api/vehicles?customerId=${customerId}`).expect(200)
  for (const { vehicleId, version: of, ...vehicle } of listed.vehicles)
    await desk
      .put(
        `/api/vehicles/${vehicleId}`,
        { ...vehicle, plate: marks.plate, notes: marks.notes },
        { 'if-match': `"${of}"` },
      )
      .expect(200)
}

/** Everything else that can hold a person: another card made one with theirs, a draft, a choice, a link, a refused note, a message. */
const spread = async (
  { shop, desk }: Shop,
  { customerId, orderId, othersDraft }: Omit<MarkedPerson, 'photo'>,
): Promise<void> => {
  const once = { 'idempotency-key': randomUUID() }
  const other = { ...cardOf(`${marks.name} again`), phone: marks.phone }
  const { body: second } = await desk.post('/api/customers', other, once).expect(201)
  const { body: card } = await desk.get(`/api/customers/${customerId}`).expect(200)
  await desk
    .post(
      `/api/customers/${customerId}/merges`,
      { mergedId: second.customerId, mergedVersion: second.version, take: ['phone', 'email'] },
      { 'if-match': `"${card.version}"` },
    )
    .expect(201)
  const { body: now } = await desk.get(`/api/customers/${customerId}`).expect(200)
  const { customerId: _id, version, ...content } = now
  await desk
    .put(`/api/customers/${customerId}`, { ...content, email: marks.email }, { 'if-match': `"${version}"` })
    .expect(200)
  const draft = { version: 2, form: { person: { name: marks.name }, which: { plate: marks.plate } } }
  await desk.put(`/api/write-up-drafts/${randomUUID()}`, { body: draft }).expect(204)
  await desk
    .put(`/api/write-up-drafts/${othersDraft}`, { body: { form: { person: 'Somebody' } } })
    .expect(204)
  // Of the same name only: erased with the person, because it may be them, and in no copy, because it may not.
  await desk
    .put(`/api/write-up-drafts/${randomUUID()}`, { body: { form: { person: { name: marks.name } } } })
    .expect(204)
  await desk
    .put(`/api/customers/${customerId}/message-choices`, {
      ...{ purpose: 'retorque', channel: 'email', allowed: true },
    })
    .expect(204)
  const { body: link } = await desk.post(`/api/orders/${orderId}/links`).expect(201)
  await shop.nobody.post('/api/customer/session', { secret: link.secret }).expect(201)
  if ((await sendLate({ shop, desk }, orderId)) !== 'refused') throw new Error('the order is open')
  await rowsOf(
    shop,
    `insert into messages (shop_id, id, order_id, purpose, channel, caused_by, made_by, created_at, state, due_at, next_try_at,
        recipient, unsubscribe, server_words, ended_at)
       values ($1, gen_random_uuid(), $2, 'report', 'email', gen_random_uuid(), '{}', now(), 'handed-over', now(), now(), $3, 'u',
        'taken for ' || $3, now())`,
    [shop.demo.shop.id, orderId, marks.email],
  )
}

/** The card of somebody who left no way to be reached. */
export const cardOf = (name: string) => ({
  ...{ name, phone: null, email: null, language: 'en' },
  ...{ mayText: false, mayEmail: false, mayCall: false },
})

/** A note that a desk had not sent before the order was closed: it is kept among what was refused. */
export const sendLate = async ({ shop, desk }: Shop, orderId: string): Promise<string> => {
  const words = sideOf(`${marks.name} called`)
  const payload = { words: words.digest, reportedLight: null, events: [] }
  const late = await writerOn(shop, orderId)(desk, 'complaint.recorded', payload, [words])
  return late.result
}
