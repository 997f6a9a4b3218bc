import { setTimeout as pause } from 'node:timers/promises'
import { sideOf } from '../../support/write-entry.ts'
import { askDesk, signInAtDesk } from '../support/desk.ts'

/** People who write and read at a shop, whatever befalls it. */
export type Load = {
  /** Works while something is done to the shop, then until each writer has an answer to what it sent last. */
  readonly while: (done: () => Promise<void>) => Promise<void>
  /** Waits until so many more entries were acknowledged. Rejects when they are not for long. */
  readonly hasWritten: (count: number) => Promise<void>
  /** Every entry that the service said it has. */
  readonly acknowledged: ReadonlySet<string>
  /** Answers that it should not have given, one line each. */
  readonly wrong: readonly string[]
}

const writers = 6
/** A writer waits so long before it sends the same again, as a tablet does. */
const againAfterMs = 100
/** Longer than a statement may take and a connection is waited for. */
const patienceMs = 40_000
/** After the fault each writer gets through within this time, or it is a wrong answer. */
const lastAnswerMs = 90_000

/**
 * Writers append notes and readers read, at whichever of the `ports` answers. A service that cannot work may refuse the connection,
 * break it, or answer 503; every other failure is wrong. What was not acknowledged is sent again under the same id.
 */
export const openLoad = (ports: readonly number[], orders: readonly string[]): Load => {
  const acknowledged = new Set<string>()
  const wrong: string[] = []
  let session: Promise<string> | null = null

  /** The parsed answer of 200; `null` where it could not work and said so. */
  const ask = async (port: number, path: string, body?: object): Promise<unknown> => {
    let cookie: string
    try {
      session ??= signInAtDesk(port, { patienceMs })
      cookie = await session
    } catch {
      session = null
      return null
    }
    try {
      const method = body === undefined ? 'GET' : 'POST'
      const reply = await askDesk(port, cookie, { method, path, body, patienceMs })
      const text = await reply.text()
      if (reply.status === 200) return JSON.parse(text)
      if (reply.status === 401) session = null
      else if (reply.status !== 503 && reply.status !== 507)
        wrong.push(`${path}: ${reply.status} ${text.slice(0, 400)}`)
      else if (!reply.headers.get('content-type')?.includes('json')) wrong.push(`${path}: ${text}`)
      return null
    } catch (error) {
      if (error instanceof Error && error.name === 'TimeoutError') wrong.push(`${path}: no answer`)
      return null
    }
  }

  const write = async (writer: number, isOver: () => boolean): Promise<void> => {
    for (let turn = writer; !isOver(); turn += 1) {
      const side = sideOf(`A note among many, ${turn}.`)
      const id = crypto.randomUUID()
      const note = {
        ...{ id, orderId: orders[turn % orders.length], kind: 'note.added', version: 1 },
        ...{ payload: { words: side.digest }, writtenAt: new Date().toISOString(), restsOn: [] },
      }
      const until = performance.now() + lastAnswerMs
      for (let attempt = turn; ; attempt += 1) {
        const port = ports[attempt % ports.length] ?? 0
        const answer = (await ask(port, '/api/entries', { entries: [note], sides: [side] })) as {
          results: readonly { readonly result: string }[]
        } | null
        const result = answer?.results[0]?.result
        if (result === 'accepted' || result === 'known') {
          acknowledged.add(id)
          break
        }
        if (result !== undefined) {
          wrong.push(`an entry was ${JSON.stringify(answer?.results)}`)
          break
        }
        if (isOver() && performance.now() > until) {
          wrong.push('an entry was never acknowledged')
          break
        }
        await pause(againAfterMs)
      }
    }
  }

  const read = async (isOver: () => boolean): Promise<void> => {
    for (let turn = 0; !isOver(); turn += 1) {
      const port = ports[turn % ports.length] ?? 0
      await ask(port, turn % 2 === 0 ? `/api/orders/${orders[turn % orders.length]}` : '/readyz')
      await pause(againAfterMs)
    }
  }

  return {
    acknowledged,
    wrong,
    hasWritten: async (count) => {
      const enough = acknowledged.size + Math.round(count)
      for (const end = performance.now() + lastAnswerMs; acknowledged.size < enough; await pause(5))
        if (performance.now() > end)
          throw new Error(`only ${acknowledged.size} of ${enough} were acknowledged`)
    },
    while: async (done) => {
      let over = false
      const isOver = () => over
      const working = [...Array.from({ length: writers }, (_, index) => write(index, isOver)), read(isOver)]
      try {
        await done()
      } finally {
        over = true
        await Promise.all(working)
      }
    },
  }
}
