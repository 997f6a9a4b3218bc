import type { Entry } from '@bayledger/ledger/entry'
import { people } from '../../../prisma/seeds/demo/people.ts'
import { tamberStreet } from '../../../prisma/seeds/demo/places.ts'

/** What a journey asks of the service as the advisor, where no screen of the desk is its subject. */
export type DeskCalls = {
  /** A code that enrolls one tablet. */
  readonly enrollmentCode: () => Promise<string>
  /** What the server's ledger holds of an order. */
  readonly entriesOf: (orderId: string) => Promise<Entry[]>
  /** The customer's page of an order: path and key. */
  readonly customerLink: (orderId: string) => Promise<string>
  readonly get: (path: string) => Promise<unknown>
}

/** The service at `address` as its pages call it; throws where it answers with a problem. */
export const callDesk = (address: string): DeskCalls => {
  let session: Promise<string> | null = null
  const call = async (method: 'GET' | 'POST', path: string, cookie: string, body?: object) => {
    const reply = await fetch(`${address}${path}`, {
      method,
      headers: {
        'sec-fetch-site': 'same-origin',
        'bayledger-face': 'desk',
        cookie,
        ...(body === undefined ? {} : { 'content-type': 'application/json' }),
      },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    })
    if (!reply.ok) throw new Error(`${method} ${path}: ${reply.status} ${await reply.text()}`)
    return reply
  }
  const signIn = async (): Promise<string> => {
    const { signInName: name, password } = people.ottoline
    const reply = await call('POST', '/api/sessions/desk', '', { name, password })
    const cookies = reply.headers.getSetCookie()
    return cookies.map((cookie) => cookie.split(';')[0]).join('; ')
  }
  const ask = async <Reply>(method: 'GET' | 'POST', path: string, body?: object): Promise<Reply> => {
    session ??= signIn()
    return (await (await call(method, path, await session, body)).json()) as Reply
  }
  return {
    enrollmentCode: async () => {
      // A code needs a recent proof of who asks for it.
      session = signIn()
      return (await ask<{ code: string }>('POST', '/api/enrollment-codes', { locationId: tamberStreet.id }))
        .code
    },
    entriesOf: async (orderId) => (await ask<{ entries: Entry[] }>('GET', `/api/orders/${orderId}`)).entries,
    customerLink: async (orderId) => {
      const { address: link } = await ask<{ address: string }>('POST', `/api/orders/${orderId}/links`)
      return new URL(link).pathname + new URL(link).hash
    },
    get: (path) => ask('GET', path),
  }
}
