import { contract } from '@bayledger/contract/contract'
import type { Endpoint } from '@bayledger/contract/endpoint'
import { isErrorCode } from '@bayledger/contract/errors'
import { english } from '@bayledger/wording/en/english'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, cookiesIn, type Method, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'

type Operation = {
  readonly operationId: string
  readonly 'x-access': Endpoint['access']['who']
  readonly parameters: readonly { readonly name: string; readonly in: string }[]
  readonly responses: Record<string, { readonly content?: Record<string, unknown> }>
}

let shop: TestApp
let document: { openapi: string; paths: Record<string, Record<string, Operation>> }
let callers: Record<Endpoint['access']['who'], Caller>
let orderId: string
beforeAll(async () => {
  shop = await startTestApp()
  document = (await shop.nobody.get('/api/openapi.json').expect(200)).body
  const replay = await replayOn(shop)
  const order = freshCopy(shop.demo, 'T-2602')
  orderId = order.orderId
  await replay.sendUntil(order.lines)
  const desk = await shop.desk('marguerite')
  const { body: link } = await desk.post(`/api/orders/${orderId}/links`).expect(201)
  const opened = await shop.nobody.post('/api/customer/session', { secret: link.secret }).expect(201)
  callers = {
    desk,
    staff: desk,
    device: await shop.tablet(),
    'customer-link': shop.withCookies(cookiesIn(opened)),
    public: shop.nobody,
  }
})
afterAll(() => shop.stop())

const operations = () =>
  Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ path, method: method as Method, operation })),
  )
const filled = (path: string) =>
  path.replace(/\{(\w+)\}/g, (_, name: string) =>
    name === 'orderId'
      ? orderId
      : name === 'digest'
        ? '0'.repeat(64)
        : '019bb314-2300-7000-8000-000000000000',
  )
const queries: Readonly<Record<string, string>> = {
  search: '?q=TMB',
  listVehicles: '?customerId=019bb314-2300-7000-8000-000000000000',
  getEntriesAfter: '?after=0',
  recallLot: '?lot=A',
  listTorquedWheels: '?since=2026-01-01',
  getNumbers: '?from=2026-01-01&until=2026-01-31',
  listSecurityEvents: '?from=2026-01-12&to=2026-01-12',
  getDay: '?locationId=019bb314-2300-7000-8000-000000000000&day=2026-01-12',
  exportOrders: '?from=2026-01-12&to=2026-01-12',
  exportReadings: '?from=2026-01-12&to=2026-01-12',
  exportTorque: '?from=2026-01-12&to=2026-01-12',
  exportParts: '?from=2026-01-12&to=2026-01-12',
  exportSales: '?from=2026-01-12&to=2026-01-12',
  exportDay: '?locationId=019bb314-2300-7000-8000-000000000000&day=2026-01-12',
}
/** A stream never ends; its own test reads it. */
const streams = new Set(['live'])

describe('the OpenAPI document', () => {
  it('is of version 3.1 and holds every route of the contract and no other', () => {
    expect(document.openapi).toBe('3.1.0')
    expect(
      operations()
        .map(({ operation }) => operation.operationId)
        .toSorted(),
    ).toEqual(contract.map(({ operationId }) => operationId).toSorted())
  })

  it('names every parameter of every path', () => {
    for (const { path, operation } of operations())
      expect(
        operation.parameters.filter((parameter) => parameter.in === 'path').map(({ name }) => name),
      ).toEqual([...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => name))
  })

  it('is kept by every route: each answers its own caller with a status and a type that it declares', async () => {
    for (const { path, method, operation } of operations()) {
      if (streams.has(operation.operationId) || operation.operationId === 'signOut') continue
      const caller = callers[operation['x-access']]
      const call = caller.call(method, `${filled(path)}${queries[operation.operationId] ?? ''}`)
      const reply = method === 'get' || method === 'delete' ? await call : await call.send({})
      const declared = operation.responses[String(reply.status)]
      expect(declared, `${operation.operationId} answered ${reply.status}: ${reply.text}`).toBeDefined()
      expect(reply.status, operation.operationId).not.toBe(500)
      const type = reply.headers['content-type']?.split(';')[0]
      if (type !== undefined) expect(Object.keys(declared?.content ?? {})).toContain(type)
      if (method === 'get' && !path.includes('{number}') && !path.endsWith('/report'))
        expect([200, 404], `${operation.operationId} ${reply.text}`).toContain(reply.status)
      expect(reply.headers['cache-control'] ?? 'no-store').toBe('no-store')
    }
  })

  it('is kept towards strangers: none gets past a route that is not public', async () => {
    for (const { path, method, operation } of operations()) {
      if (operation['x-access'] === 'public') continue
      const reply = await shop.nobody.call(method, filled(path)).send(method === 'get' ? undefined : {})
      expect(reply.status, operation.operationId).toBe(401)
      expect(operation.responses['401'], operation.operationId).toBeDefined()
    }
  })

  it('is kept towards a customer and a tablet without a person: neither gets what is the staff’s', async () => {
    for (const { path, method, operation } of operations()) {
      if (operation['x-access'] !== 'desk' && operation['x-access'] !== 'staff') continue
      for (const who of ['customer-link', 'device'] as const) {
        const reply = await callers[who].call(method, filled(path)).send(method === 'get' ? undefined : {})
        expect(reply.status, `${operation.operationId} as ${who}`).toBe(401)
      }
    }
  })

  it('is kept towards a tablet: what belongs to the desk is refused there', async () => {
    const bay = await (await shop.tablet()).signIn('bo')
    for (const { path, method, operation } of operations()) {
      if (operation['x-access'] !== 'desk') continue
      const reply = await bay.call(method, filled(path)).send(method === 'get' ? undefined : {})
      expect(reply.status, operation.operationId).toBe(403)
    }
  })
})

describe('who may call what', () => {
  it('is this table; a change of it is looked at by a person', () => {
    const table = contract
      .map((endpoint: Endpoint) => {
        const roles =
          'roles' in endpoint.access && endpoint.access.roles ? ` (${endpoint.access.roles.join(', ')})` : ''
        const proven = 'proof' in endpoint.access ? ', proven lately' : ''
        return `${endpoint.access.who}${roles}${proven}: ${endpoint.method} ${endpoint.path}`
      })
      .toSorted()
    expect(table).toMatchInlineSnapshot(`
      [
        "customer-link: GET /api/customer/order",
        "customer-link: GET /api/customer/photos/:digest",
        "customer-link: GET /api/customer/report",
        "customer-link: POST /api/customer/decisions",
        "customer-link: PUT /api/customer/language",
        "desk (advisor, lead, manager, owner): DELETE /api/orders/:orderId/messages/:messageId",
        "desk (advisor, lead, manager, owner): DELETE /api/write-up-drafts/:draftId",
        "desk (advisor, lead, manager, owner): GET /api/customers",
        "desk (advisor, lead, manager, owner): GET /api/customers/:customerId",
        "desk (advisor, lead, manager, owner): GET /api/customers/:customerId/merges",
        "desk (advisor, lead, manager, owner): GET /api/customers/:customerId/message-choices",
        "desk (advisor, lead, manager, owner): GET /api/exports/orders.csv",
        "desk (advisor, lead, manager, owner): GET /api/exports/parts.csv",
        "desk (advisor, lead, manager, owner): GET /api/orders/:orderId/messages",
        "desk (advisor, lead, manager, owner): GET /api/orders/:orderId/new-time",
        "desk (advisor, lead, manager, owner): GET /api/orders/:orderId/reports/:number",
        "desk (advisor, lead, manager, owner): GET /api/stock/items",
        "desk (advisor, lead, manager, owner): GET /api/stock/items/:id",
        "desk (advisor, lead, manager, owner): GET /api/stock/items/:id/changes",
        "desk (advisor, lead, manager, owner): GET /api/stock/transfers",
        "desk (advisor, lead, manager, owner): GET /api/vehicles",
        "desk (advisor, lead, manager, owner): GET /api/vehicles/:vehicleId/merges",
        "desk (advisor, lead, manager, owner): GET /api/write-up-drafts",
        "desk (advisor, lead, manager, owner): POST /api/customers",
        "desk (advisor, lead, manager, owner): POST /api/customers/:customerId/merges",
        "desk (advisor, lead, manager, owner): POST /api/merges/:mergeId/undo",
        "desk (advisor, lead, manager, owner): POST /api/orders/:orderId/links",
        "desk (advisor, lead, manager, owner): POST /api/orders/:orderId/messages",
        "desk (advisor, lead, manager, owner): POST /api/orders/:orderId/new-time",
        "desk (advisor, lead, manager, owner): POST /api/stock/items/:id/changes",
        "desk (advisor, lead, manager, owner): POST /api/stock/transfers/:transferId/arrival",
        "desk (advisor, lead, manager, owner): POST /api/vehicles/:vehicleId/merges",
        "desk (advisor, lead, manager, owner): PUT /api/customers/:customerId",
        "desk (advisor, lead, manager, owner): PUT /api/customers/:customerId/message-choices",
        "desk (advisor, lead, manager, owner): PUT /api/write-up-drafts/:draftId",
        "desk (advisor, manager, owner): GET /api/day",
        "desk (advisor, manager, owner): GET /api/day.csv",
        "desk (lead, manager, owner): GET /api/imports/:watch",
        "desk (lead, manager, owner): GET /api/sheets.csv",
        "desk (lead, manager, owner): GET /api/sheets/:sheetId/orders",
        "desk (lead, manager, owner): POST /api/sheets",
        "desk (lead, manager, owner): POST /api/sheets/:sheetId/versions",
        "desk (lead, manager, owner): POST /api/sheets/import",
        "desk (lead, manager, owner): POST /api/sheets/import/preview",
        "desk (manager, owner), proven lately: POST /api/price-book/import",
        "desk (manager, owner), proven lately: POST /api/tablets/import",
        "desk (manager, owner), proven lately: PUT /api/price-book/:id",
        "desk (manager, owner), proven lately: PUT /api/tablets/:id",
        "desk (manager, owner): GET /api/checklist",
        "desk (manager, owner): GET /api/exports/sales.csv",
        "desk (manager, owner): GET /api/holds",
        "desk (manager, owner): GET /api/numbers",
        "desk (manager, owner): GET /api/price-book",
        "desk (manager, owner): GET /api/price-book.csv",
        "desk (manager, owner): GET /api/price-book/:id",
        "desk (manager, owner): GET /api/register/instruments",
        "desk (manager, owner): GET /api/register/instruments.csv",
        "desk (manager, owner): GET /api/register/instruments/:id",
        "desk (manager, owner): GET /api/register/instruments/:id/torqued-wheels",
        "desk (manager, owner): GET /api/stock.csv",
        "desk (manager, owner): GET /api/tablets",
        "desk (manager, owner): GET /api/tablets.csv",
        "desk (manager, owner): GET /api/tablets/:id",
        "desk (manager, owner): POST /api/holds",
        "desk (manager, owner): POST /api/price-book/import/preview",
        "desk (manager, owner): POST /api/register/instruments",
        "desk (manager, owner): POST /api/register/instruments/import",
        "desk (manager, owner): POST /api/register/instruments/import/preview",
        "desk (manager, owner): POST /api/stock/import",
        "desk (manager, owner): POST /api/stock/import/preview",
        "desk (manager, owner): POST /api/stock/items",
        "desk (manager, owner): POST /api/tablets/import/preview",
        "desk (manager, owner): PUT /api/register/instruments/:id",
        "desk (manager, owner): PUT /api/stock/items/:id",
        "desk (owner), proven lately: POST /api/customers/:customerId/erasure",
        "desk (owner), proven lately: POST /api/customers/:customerId/own-data",
        "desk (owner), proven lately: POST /api/holds/:holdId/lift",
        "desk (owner), proven lately: POST /api/own-owner-code",
        "desk (owner), proven lately: POST /api/people",
        "desk (owner), proven lately: POST /api/people/import",
        "desk (owner), proven lately: POST /api/register/texts/import",
        "desk (owner), proven lately: PUT /api/people/:id",
        "desk (owner), proven lately: PUT /api/register/access-rules",
        "desk (owner), proven lately: PUT /api/register/retention",
        "desk (owner), proven lately: PUT /api/register/texts",
        "desk (owner): GET /api/customers/:customerId/erasure",
        "desk (owner): GET /api/customers/:customerId/own-data",
        "desk (owner): GET /api/erasures",
        "desk (owner): GET /api/own-owner-code",
        "desk (owner): GET /api/people",
        "desk (owner): GET /api/people.csv",
        "desk (owner): GET /api/people/:id",
        "desk (owner): GET /api/places",
        "desk (owner): GET /api/places.csv",
        "desk (owner): GET /api/places/:id",
        "desk (owner): GET /api/register/access-rules",
        "desk (owner): GET /api/register/retention",
        "desk (owner): GET /api/register/retention/due",
        "desk (owner): GET /api/register/texts",
        "desk (owner): GET /api/register/texts.csv",
        "desk (owner): GET /api/security-events",
        "desk (owner): POST /api/people/import/preview",
        "desk (owner): POST /api/places",
        "desk (owner): POST /api/places/import",
        "desk (owner): POST /api/places/import/preview",
        "desk (owner): POST /api/register/texts/import/preview",
        "desk (owner): PUT /api/places/:id",
        "desk (technician, lead, manager, owner): GET /api/exports/readings.csv",
        "desk (technician, lead, manager, owner): GET /api/exports/torque.csv",
        "desk, proven lately: DELETE /api/people/:id/passkeys/:passkeyId",
        "desk, proven lately: DELETE /api/people/:id/second-step",
        "desk, proven lately: POST /api/enrollment-codes",
        "desk, proven lately: POST /api/own-passkeys",
        "desk, proven lately: POST /api/own-passkeys/challenge",
        "desk, proven lately: POST /api/own-second-step",
        "desk, proven lately: POST /api/own-second-step/confirmation",
        "desk: DELETE /api/orders/:orderId/links/:linkId",
        "desk: DELETE /api/people/:id/sessions",
        "desk: DELETE /api/people/:id/sessions/:sessionId",
        "desk: GET /api/orders/:orderId/comeback",
        "desk: GET /api/orders/:orderId/links",
        "desk: GET /api/own-record",
        "desk: GET /api/people/:id/passkeys",
        "desk: GET /api/people/:id/second-step",
        "desk: GET /api/people/:id/sessions",
        "desk: GET /api/search",
        "desk: GET /api/vehicles/:vehicleId",
        "desk: GET /api/vehicles/:vehicleId/page",
        "desk: POST /api/orders/:orderId/reports",
        "desk: POST /api/refused-entries/:entryId/settle",
        "desk: POST /api/sessions/current/proof",
        "desk: POST /api/sessions/current/proof/passkey",
        "desk: POST /api/sessions/current/proof/passkey/challenge",
        "desk: POST /api/sheets/blank",
        "desk: POST /api/vehicles",
        "desk: PUT /api/people/:id/password",
        "desk: PUT /api/people/:id/pin",
        "desk: PUT /api/vehicles/:vehicleId",
        "device: GET /api/devices/current",
        "device: GET /api/photos/:digest",
        "device: GET /api/staff",
        "device: POST /api/bay/parcels",
        "device: POST /api/sessions/bay",
        "device: POST /api/sessions/bay/resumed",
        "device: PUT /api/devices/current/unsent",
        "device: PUT /api/photos/:digest/pieces/:piece",
        "public: GET /api/first-shop",
        "public: GET /api/openapi.json",
        "public: GET /api/shops",
        "public: GET /api/signing-keys",
        "public: GET /api/unsubscribe/:token",
        "public: GET /healthz",
        "public: GET /readyz",
        "public: POST /api/customer/session",
        "public: POST /api/devices",
        "public: POST /api/first-shop",
        "public: POST /api/report-checks",
        "public: POST /api/sealed-parcels",
        "public: POST /api/sealed-photos",
        "public: POST /api/sessions/desk",
        "public: POST /api/sessions/desk/owner-code",
        "public: POST /api/sessions/desk/passkey",
        "public: POST /api/sessions/desk/passkey/challenge",
        "public: POST /api/unsubscribe/:token",
        "staff: DELETE /api/sessions/current",
        "staff: GET /api/floor",
        "staff: GET /api/instruments",
        "staff: GET /api/live",
        "staff: GET /api/orders/:orderId",
        "staff: GET /api/orders/:orderId/diagnosis/today",
        "staff: GET /api/orders/:orderId/entries",
        "staff: GET /api/orders/:orderId/photos",
        "staff: GET /api/orders/:orderId/photos/:digest",
        "staff: GET /api/refused-entries",
        "staff: GET /api/refused-entries/:entryId",
        "staff: GET /api/sessions/current",
        "staff: GET /api/settings",
        "staff: GET /api/sheets",
        "staff: GET /api/sheets/:sheetId",
        "staff: GET /api/stock",
        "staff: GET /api/stock/recall",
        "staff: GET /api/vehicles/:vehicleId/last-odometer",
        "staff: POST /api/devices/current/key",
        "staff: POST /api/diagnoses",
        "staff: POST /api/entries",
        "staff: POST /api/second-person",
        "staff: POST /api/sheets/:sheetId/figures",
        "staff: POST /api/sheets/:sheetId/verified-figures",
        "staff: PUT /api/held-orders",
      ]
    `)
  })
})

describe('every route that writes', () => {
  /** All but the one click by which a mail program of anybody ends messages (RFC 8058); its path holds what allows it. */
  const writing = () =>
    operations().filter(
      ({ method, operation }) => method !== 'get' && operation.operationId !== 'unsubscribe',
    )

  it('refuses a page of another site, whatever it sends', async () => {
    const foreign: Record<string, string>[] = [
      { 'sec-fetch-site': 'cross-site' },
      { 'sec-fetch-site': 'same-site' },
      { 'sec-fetch-site': 'same-origin', origin: 'https://elsewhere.example' },
      { 'sec-fetch-site': 'none' },
    ]
    for (const { path, method, operation } of writing())
      for (const headers of foreign) {
        const reply = await callers[operation['x-access']].call(method, filled(path), headers).send({})
        expect(reply.status, operation.operationId).toBe(403)
        expect(reply.body.code).toBe('REQUEST_FROM_ELSEWHERE')
      }
  })

  it('refuses a form and plain text', async () => {
    for (const { path, method, operation } of writing().filter(({ method }) => method !== 'delete'))
      for (const type of ['application/x-www-form-urlencoded', 'text/plain']) {
        const reply = await callers[operation['x-access']]
          .call(method, filled(path), { 'content-type': type })
          .send('a=b')
        expect(reply.status, `${operation.operationId} ${type}`).toBe(415)
      }
  })

  it('lets no other site read an answer', async () => {
    for (const { path, method, operation } of operations()) {
      if (streams.has(operation.operationId)) continue
      const reply = await shop.nobody.call(method, filled(path), { origin: 'https://elsewhere.example' })
      expect(reply.headers['access-control-allow-origin']).toBeUndefined()
      expect(reply.headers['x-content-type-options']).toBe('nosniff')
      expect(reply.headers['content-security-policy']).toContain("default-src 'self'")
      expect(reply.headers['content-security-policy']).not.toMatch(/script-src[^;]*unsafe/)
    }
  })
})

describe('a problem', () => {
  it('has its code’s own status and title, and the request’s id', async () => {
    const reply = await shop.nobody.get('/api/floor').expect(401)
    expect(isErrorCode(reply.body.code)).toBe(true)
    expect(reply.body).toMatchObject({
      type: '/docs/errors#SESSION_MISSING',
      title: english.problems.SESSION_MISSING.title,
      status: 401,
      requestId: expect.stringMatching(/^[0-9a-f-]{36}$/),
    })
  })
})
