import { setTimeout as pause } from 'node:timers/promises'
import { withClient } from '@bayledger/db/with-client'
import type { Client } from 'pg'
import { mailServer } from '../../../support/mail-server.ts'
import { type Desk, openDesk } from '../../support/desk.ts'
import type { FaultKind } from '../fault-kind.ts'
import { nothingJudged } from '../judge.ts'
import { untilReady } from '../ready.ts'
import { type RunningShop, startShop } from '../running-shop.ts'
import { addressesOf, type ShopFolder } from '../shop-folder.ts'

const messagesOfARound = 3
const patienceMs = 60_000

/**
 * The mail server is away, busy or silent while letters wait, or the service is killed while one is handed over. Both come back;
 * the waits between tries are cut short.
 */
export const mailServerDown: FaultKind = {
  name: 'mail server down',
  rounds: 20,
  open: async (from) => {
    const mail = await mailServer()
    const shop = await startShop(from, {
      environment: { SMTP_URL: mail.url, MAIL_FROM: 'desk@tamber.example' },
    })
    const desk = openDesk(shop.service.port)
    await agree(desk, from)
    const sent = new Set<string>()
    return {
      round: async (random) => {
        const trouble = random.oneOf(['away', 'busy', 'hangs', 'killed'] as const)
        mail.becomes(trouble === 'busy' || trouble === 'hangs' ? trouble : 'takes')
        if (trouble !== 'away') await mail.start()
        // In the middle of a letter: it has arrived, and the service does not hear that it has.
        if (trouble === 'killed') mail.onLetter(() => shop.service.kill())
        for (let message = 0; message < messagesOfARound; message += 1)
          sent.add(await send(desk, random.oneOf(from.orders)))
        await pause(random.between(6_000, 8_000))
        mail.onLetter(() => undefined)
        await shop.service.kill()
        if (trouble !== 'away') await mail.stop()
        mail.becomes('takes')
        await mail.start()
        await letTimePass(shop)
        const begun = performance.now()
        await shop.service.start()
        await untilReady(shop.service.port)
        const seconds = (performance.now() - begun) / 1000
        await untilHandedOver(shop)
        await mail.stop()
        return seconds
      },
      judge: async () => {
        const ids = mail.arrived.map(
          (letter) => letter.header('message-id')?.match(/<([^@]+)@/)?.[1] ?? 'none',
        )
        const lost = [...sent].filter((id) => !ids.includes(id))
        // A letter that came twice under one Message-ID is one letter to a mailbox; under another it would be two.
        const strangers = [...new Set(ids)].filter((id) => !sent.has(id))
        return {
          ...nothingJudged,
          acknowledged: sent.size,
          messagesLost: lost.length,
          messagesDoubled: strangers.length,
          lines: [
            ...lost.map((id) => `never arrived: ${id}`),
            ...strangers.map((id) => `nobody sent it: ${id}`),
          ],
        }
      },
      close: shop.close,
    }
  },
}

/** The customer of the orders, who is the same one, agrees to letters. */
const agree = async (desk: Desk, { orders: [order = ''] }: ShopFolder): Promise<void> => {
  const { customer } = (await desk('GET', `/api/orders/${order}`)) as {
    customer: { readonly customerId: string; readonly version: number }
  }
  const { customerId, version, ...content } = customer
  await desk(
    'PUT',
    `/api/customers/${customerId}`,
    { ...content, mayEmail: true, language: 'en', email: 'someone@mail.example' },
    version,
  )
}

const send = async (desk: Desk, orderId: string): Promise<string> => {
  const asked = { purpose: 'estimate', channel: 'email', inQuietHours: true, entryId: crypto.randomUUID() }
  const sent = (await desk('POST', `/api/orders/${orderId}/messages`, asked)) as { messageId: string }
  return sent.messageId
}

/** Whatever waits is due again, and no other process has it, as some minutes later. The service does not run. */
const letTimePass = (shop: RunningShop): Promise<void> =>
  onDatabase(shop, async (client) => {
    await client.query(
      "update messages set next_try_at = now() - interval '1 second', lease_until = null where state = 'waiting'",
    )
  })

const untilHandedOver = (shop: RunningShop): Promise<void> =>
  onDatabase(shop, async (client) => {
    for (const end = performance.now() + patienceMs; performance.now() < end; await pause(100))
      if ((await client.query("select from messages where state = 'waiting'")).rowCount === 0) return
    throw new Error('letters are not handed over though the mail server takes them')
  })

const onDatabase = <T>({ dataFolder }: RunningShop, work: (client: Client) => Promise<T>): Promise<T> => {
  const at = addressesOf(dataFolder)
  if (at === null) throw new Error('PostgreSQL does not run')
  return withClient(at.superuser, work)
}
