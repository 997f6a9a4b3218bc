import { people } from '../../prisma/seeds/demo/people.ts'
import { chanceOf, seedOf } from '../simulate/chance.ts'
import { type FuzzTarget, openCallers, type RoleName, roleNames, rolesFor } from './callers.ts'
import { faultOf, type Limits, readJson } from './judge-reply.ts'
import { knownValues } from './known-values.ts'
import { type FuzzRequest, makeRequest } from './make-request.ts'
import { type Operation, operationsIn } from './operations.ts'
import { type FuzzReply, sendRequest } from './send.ts'

export type Fault = {
  readonly number: number
  readonly request: FuzzRequest
  readonly reply: FuzzReply
  readonly what: string
}

export type Fuzzed = {
  readonly faults: readonly Fault[]
  /** How many answers had each status. */
  readonly statuses: ReadonlyMap<number, number>
  /** The ids of all entries that were accepted. */
  readonly accepted: readonly string[]
  /** Every operation of the document, and those that were answered with success at least once. */
  readonly operations: readonly string[]
  readonly reached: ReadonlySet<string>
  /** Each operation with each role that called it: `getOrder as nobody`. */
  readonly called: ReadonlySet<string>
  readonly slowestMs: number
  /** How many answers came too late, and did not when the same was sent again. */
  readonly late: number
}

export type FuzzOptions = Limits & {
  readonly requests: number
  readonly seed: number
  /** How often each operation is first called without anything wrong, until it was answered with success. */
  readonly rightFirst: number
  /** Told after every hundredth request and of every fault. */
  readonly say: (line: string) => void
}

/** Appending is where the record is, so it gets its share beside the other operations. */
const shareOfEntries = 0.25

/**
 * Sends requests that are made from the service's own OpenAPI document, one after the other, as every role, and judges every
 * answer. The same seed makes the same requests, but for what the service draws itself.
 */
export const fuzz = async (
  target: FuzzTarget,
  { requests, seed, say, slowestMs, rightFirst }: FuzzOptions,
): Promise<Fuzzed> => {
  const get = (path: string, cookie = '') =>
    sendRequest(
      target.address,
      { method: 'GET', path, headers: cookie === '' ? {} : { cookie }, body: null },
      0,
    )
  const operations = operationsIn(readJson((await get('/api/openapi.json')).text))
  const entries = operations.find(({ operationId }) => operationId === 'appendEntries')
  const known = knownValues()
  const files = new Map<string, Uint8Array>()
  const previews = new Map<string, { readonly bytes: Uint8Array; readonly digest: string }>()
  const faults: Fault[] = []
  const statuses = new Map<number, number>()
  const accepted: string[] = []
  const reached = new Set<string>()
  const called = new Set<string>()
  let slowest = 0
  let late = 0
  const isLate = ({ milliseconds }: FuzzReply): boolean => slowestMs !== null && milliseconds > slowestMs
  // What everybody signs in with, so that it is typed again where a password or a PIN is asked for.
  for (const { id, signInName, password, pin } of Object.values(people)) {
    known.learn('/api/sessions', { name: signInName, staffId: id, pin })
    known.learn('/api/second-person', { staffId: id, pin })
    if (signInName === people.marguerite.signInName) known.learn('/api/sessions', { password })
  }
  const callers = await openCallers(target, (path, reply) => {
    const operation = operations.find((one) => one.method === 'POST' && one.path === path)
    if (operation) learn(operation, reply, null)
  })

  const learn = (operation: Operation, reply: FuzzReply, sent: Uint8Array | null): void => {
    if (reply.status >= 300) return
    reached.add(operation.operationId)
    if (reply.type.startsWith('application/json') && operation.operationId !== 'openApi')
      known.learn(operation.path, readJson(reply.text))
    if (reply.type.startsWith('text/csv')) files.set(nounOfCsv(operation.path), Buffer.from(reply.text))
    if (sent && operation.path.endsWith('/import/preview'))
      previews.set(nounOfCsv(operation.path), { bytes: sent, digest: digestIn(readJson(reply.text)) })
    if (operation === entries) accepted.push(...acceptedIn(readJson(reply.text)))
  }

  // What everybody may read comes first, so that the requests name what there is.
  const owner = (await callers.cookiesOf('owner at the desk')).join('; ')
  for (const operation of operations)
    if (operation.method === 'GET' && !/[{]|live$|own-data/.test(operation.path))
      learn(operation, await get(operation.path, owner), null)
  const ledger = operations.find(({ operationId }) => operationId === 'getOrder')
  if (ledger) learn(ledger, await get(ledger.path.replace('{orderId}', target.orderId), owner), null)

  const csv = {
    of: (path: string) => files.get(nounOfCsv(path)),
    shown: (path: string) => previews.get(nounOfCsv(path)),
  }
  const waiting = operations.flatMap((operation) =>
    Array.from({ length: rightFirst }, (_, turn) => ({ operation, turn })),
  )
  for (let number = 1; number <= requests; number += 1) {
    const chance = chanceOf(seedOf(seed, number))
    while (waiting[0] && reached.has(waiting[0].operation.operationId)) waiting.shift()
    const right = waiting.shift()
    const operation =
      right?.operation ?? (entries && chance.happens(shareOfEntries) ? entries : chance.pick(operations))
    const roles = rolesFor(operation.access)
    // Mostly whoever may most.
    const role = right
      ? (roles.at(-1 - (right.turn % 3 === 2 ? right.turn % roles.length : 0)) ?? 'nobody')
      : roleOf(chance.happens(0.8) ? roles : roleNames, chance.word())
    const drawing = { chance, known, now: target.now, path: operation.path }
    const made = makeRequest(drawing, operation, role, csv, right ? 1 : undefined)
    called.add(calledAs(operation.operationId, role))
    const cookies = await callers.cookiesOf(role)
    const cookie = cookies.length > 0 ? { cookie: cookies.join('; ') } : {}
    const request = { ...made, headers: { ...cookie, ...made.headers } }
    const reply = await sendRequest(target.address, request, number)
    statuses.set(reply.status, (statuses.get(reply.status) ?? 0) + 1)
    slowest = Math.max(slowest, reply.milliseconds)
    learn(operation, reply, request.body)
    if (isOver(operation, role, request, reply)) callers.lost(role)
    // A busy machine makes any answer late once; what is slow by itself is slow again.
    const again = isLate(reply) ? await sendRequest(target.address, request, number) : null
    if (again) late += 1
    const what = faultOf(request, reply, { slowestMs: again && !isLate(again) ? null : slowestMs })
    if (what !== null) {
      const fault = { number, request, reply, what }
      faults.push(fault)
      say(faultLine(fault))
    }
    if (number % 100 === 0) say(`requests ${number} of ${requests}, faults ${faults.length}`)
  }
  return {
    ...{ faults, statuses, accepted, reached, called, slowestMs: slowest, late },
    operations: operations.map(({ operationId }) => operationId),
  }
}

export const calledAs = (operationId: string, role: RoleName): string => `${operationId} as ${role}`

const roleOf = (roles: readonly RoleName[], word: number): RoleName => roles[word % roles.length] ?? 'nobody'

/** `/api/stock/import/preview` takes what `/api/stock.csv` gives. */
const nounOfCsv = (path: string): string => path.replace(/\.csv$|\/import(\/preview)?$/, '')

const digestIn = (preview: unknown): string => String((preview as { digest?: unknown } | null)?.digest)

const acceptedIn = (reply: unknown): string[] => {
  const { results } = (reply ?? {}) as { results?: { result: string; id: string }[] }
  return (results ?? []).flatMap(({ result, id }) => (result === 'accepted' ? [id] : []))
}

/** Whether what the role was let in by has ended. */
const isOver = (
  operation: Operation,
  role: RoleName,
  request: FuzzRequest,
  { status, text }: FuzzReply,
): boolean =>
  (status === 401 && rolesFor(operation.access).includes(role) && operation.access !== 'public') ||
  operation.operationId === 'signOut' ||
  (request.headers.cookie ?? '').includes('a'.repeat(100)) ||
  /SESSION_EXPIRED|DEVICE_UNKNOWN|PROOF_NEEDED/.test(text.slice(0, 500))

export const faultLine = ({ number, request, reply, what }: Fault): string =>
  `fault at request ${number}: ${what}\n  ${request.role}: ${request.method} ${request.path.slice(0, 300)}\n  ${JSON.stringify(
    Object.fromEntries(
      Object.entries(request.headers).map(([name, value]) => [
        name,
        name === 'cookie' ? '…' : value.slice(0, 80),
      ]),
    ),
  )}\n  ${
    request.body === null ? 'no body' : Buffer.from(request.body.subarray(0, 600)).toString()
  }\n  ${reply.text.slice(0, 300)}`
