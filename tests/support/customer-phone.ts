import { randomUUID } from 'node:crypto'
import { type Caller, cookiesIn, type TestApp } from './app.ts'
import { freshCopy } from './fresh-copy.ts'
import type { Replay } from './replay-order.ts'

/** What tests of the customer's page do with a link and a phone. */
export const customerPhone = (hands: () => { shop: TestApp; replay: Replay; desk: Caller }) => {
  /** An order whose estimate was shown, with a link and a phone that has opened it. */
  const shownOrder = async () => {
    const { shop, replay, desk } = hands()
    const { orderId, lines } = freshCopy(shop.demo, 'T-2602')
    await replay.sendUntil(lines)
    const { body: link } = await desk.post(`/api/orders/${orderId}/links`).expect(201)
    return { orderId, link, phone: await openedBy(link) }
  }

  /** One more phone that opens a link. */
  const openedBy = async (link: { secret: string }): Promise<Caller> => {
    const { shop } = hands()
    const opened = await shop.nobody.post('/api/customer/session', { secret: link.secret }).expect(201)
    return shop.withCookies(cookiesIn(opened))
  }

  /** Every answer that the order holds. */
  const decisionsOf = async (orderId: string): Promise<{ id: string; payload: object }[]> => {
    const { body } = await hands().desk.get(`/api/orders/${orderId}`).expect(200)
    return body.entries.filter(({ kind }: { kind: string }) => kind === 'estimate.decided')
  }

  return { shownOrder, openedBy, decisionsOf }
}

export type ShownBundle = {
  bundleKey: string
  agreedBefore: boolean
  answer: string | null
  answerable: boolean
  cautions: { number: string; version: number }[]
}
export const isAsked = ({ agreedBefore }: Pick<ShownBundle, 'agreedBefore'>) => !agreedBefore

/** What a phone sends that gives the same answer to all that is asked. */
export const decisionOn = async (
  phone: Caller,
  answer: 'authorized' | 'declined' | 'deferred' = 'authorized',
) => {
  const { body: order } = await phone.get('/api/customer/order').expect(200)
  return {
    entryId: randomUUID(),
    revision: order.estimate.revision,
    digest: order.estimate.digest,
    shown: order.estimate.shown,
    answers: order.estimate.bundles.filter(isAsked).map(({ bundleKey, cautions }: ShownBundle) => ({
      bundleKey,
      answer,
      deferredUntil: answer === 'deferred' ? '2026-02-12' : null,
      cautionsShown:
        answer === 'authorized' ? [] : cautions.map(({ number, version }) => ({ number, version })),
    })),
    name: 'W. Dunmore-Gray',
    relation: 'owner',
    signature: { form: 'typed', text: 'W. Dunmore-Gray' },
    agreesToElectronicRecord: true,
    wantsRemovedParts: false,
  }
}
