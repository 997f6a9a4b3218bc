import { randomUUID } from 'node:crypto'
import type { Message } from '@bayledger/contract/messages'
import { type Caller, cookiesIn, demoNow, type TestApp } from './app.ts'
import { freshCopy } from './fresh-copy.ts'
import type { Replay } from './replay-order.ts'

/** What a card holds of a customer who agrees to everything that it asks. */
export const agreeing = {
  ...{ mayEmail: true, mayText: true, language: 'en' },
  ...{ email: 'someone@mail.example', phone: '555-555-0142' },
}

type ShownBundle = {
  bundleKey: string
  agreedBefore: boolean
  cautions: { number: string; version: number }[]
}

const asked = { purpose: 'estimate', channel: 'email', inQuietHours: false }

/** What an advisor does with messages; `now` gives the shop and the desk of this moment. */
export const outboxHands = (now: () => { shop: TestApp; replay: Replay; desk: Caller }) => {
  const listed = async (orderId: string) =>
    (await now().desk.get(`/api/orders/${orderId}/messages`).expect(200)).body
  const customerOf = async (orderId: string) =>
    (await now().desk.get(`/api/orders/${orderId}`).expect(200)).body.customer
  const shownOrder = async () => {
    const { orderId, lines } = freshCopy(now().shop.demo, 'T-2602')
    await now().replay.sendUntil(lines)
    return orderId
  }
  const edit = async (orderId: string, change: object) => {
    const { customerId, version, ...content } = await customerOf(orderId)
    await now()
      .desk.put(`/api/customers/${customerId}`, { ...content, ...change }, { 'if-match': `"${version}"` })
      .expect(200)
  }
  const send = (orderId: string, change: object = {}) => {
    now().shop.clock.advance(1_000)
    return now().desk.post(`/api/orders/${orderId}/messages`, {
      ...{ entryId: randomUUID(), ...asked, ...change },
    })
  }
  /** Withdraws what other tests have left waiting. */
  const nothingDue = () =>
    now().shop.parts.prisma.message.updateMany({
      where: { state: 'waiting' },
      data: { state: 'withdrawn', endedAt: new Date(demoNow), linkSecret: null },
    })
  return {
    deliver: () => now().shop.deliver(),
    nothingDue,
    listed,
    customerOf,
    shownOrder,
    edit,
    send,
    newest: async (orderId: string): Promise<Message> => (await listed(orderId)).messages.at(-1),
    /** The customer answers Not today to everything, until a day. */
    putOff: async (orderId: string, day: string) => {
      const { body: link } = await now().desk.post(`/api/orders/${orderId}/links`).expect(201)
      const opened = await now()
        .shop.nobody.post('/api/customer/session', { secret: link.secret })
        .expect(201)
      const phone = now().shop.withCookies(cookiesIn(opened))
      const { estimate } = (await phone.get('/api/customer/order').expect(200)).body
      const answers = estimate.bundles.flatMap((bundle: ShownBundle) =>
        bundle.agreedBefore
          ? []
          : [
              {
                ...{ bundleKey: bundle.bundleKey, answer: 'deferred', deferredUntil: day },
                cautionsShown: bundle.cautions.map(({ number, version }) => ({ number, version })),
              },
            ],
      )
      const { revision, digest, shown } = estimate
      await phone
        .post('/api/customer/decisions', {
          ...{ entryId: randomUUID(), revision, digest, shown, answers, name: 'W. Dunmore-Gray' },
          ...{ relation: 'owner', signature: { form: 'typed', text: 'W. Dunmore-Gray' } },
          ...{ agreesToElectronicRecord: true, wantsRemovedParts: false },
        })
        .expect(201)
    },
    /** An order whose customer agrees, with the estimate in the outbox. */
    sentOrder: async (change: object = {}) => {
      const orderId = await shownOrder()
      await edit(orderId, agreeing)
      await send(orderId, change).expect(201)
      return orderId
    },
  }
}
