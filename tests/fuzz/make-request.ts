import type { Chance } from '../simulate/chance.ts'
import type { RoleName } from './callers.ts'
import { entriesBody } from './entry-drafts.ts'
import type { Operation, Parameter } from './operations.ts'
import type { WireRequest } from './send.ts'
import { hostileTexts, jsonOf, spoiled } from './spoil.ts'
import { type Drawing, newIdFrom, validValue } from './valid-value.ts'

/** A request as it goes over the wire, and what may be answered to it. */
export type FuzzRequest = WireRequest & {
  readonly operation: Operation
  readonly role: RoleName
  /** Whether path or wire are such that it may end before it reaches its route. */
  readonly mayMissItsRoute: boolean
}

export type CsvFiles = {
  readonly of: (path: string) => Uint8Array | undefined
  /** A file of which a preview was given, with what the preview calls it. */
  readonly shown: (path: string) => { readonly bytes: Uint8Array; readonly digest: string } | undefined
}

/**
 * A request to this operation: a third of them, or `shareRight`, are what its schemas admit, in the others one to three things are wrong with
 * values, headers, path or the bytes of the body.
 */
export const makeRequest = (
  drawing: Drawing,
  operation: Operation,
  role: RoleName,
  csv: CsvFiles,
  shareRight = 0.35,
): FuzzRequest => {
  const { chance } = drawing
  const wrong = chance.happens(shareRight) ? 0 : 1 + chance.below(3)
  const aims = Array.from({ length: wrong }, () =>
    chance.pick(['body', 'body', 'body', 'params', 'query', 'query', 'headers', 'path', 'wire'] as const),
  )
  const spoiling = <T>(aim: (typeof aims)[number], value: T): T =>
    aims.filter((one) => one === aim).reduce((worse) => spoiled(chance, worse) as T, value)

  const params = spoiling('params', valuesIn(drawing, operation.parameters, 'path'))
  const shown = chance.happens(0.6) ? csv.shown(operation.path) : undefined
  const asked = valuesIn(drawing, operation.parameters, 'query')
  const query = spoiling('query', shown && 'digest' in asked ? { ...asked, digest: shown.digest } : asked)
  const path = aims.includes('path')
    ? hostilePath(chance, filled(operation.path, params))
    : filled(operation.path, params)
  const sent = bodyOf(drawing, operation, shown?.bytes ?? csv.of(operation.path), (value) =>
    spoiling('body', value),
  )
  const headers = {
    'sec-fetch-site': 'same-origin',
    ...(sent ? { 'content-type': sent.type } : {}),
    ...headersOf(drawing, operation.parameters, params),
    ...(aims.includes('headers') ? hostileHeader(chance) : {}),
  }
  // Nobody reads the body of a GET, and the connection ends while it is still on its way.
  const wire =
    aims.includes('wire') && operation.method !== 'GET' ? hostileWire(chance, sent?.bytes ?? null) : null
  return {
    operation,
    role,
    method: wire?.method ?? operation.method,
    path: `${path}${queryText(chance, query)}`,
    headers: { ...headers, ...wire?.headers },
    body: wire ? wire.body : (sent?.bytes ?? null),
    mayMissItsRoute: aims.some((aim) => aim === 'path' || aim === 'params' || aim === 'wire'),
  }
}

const valuesIn = (
  drawing: Drawing,
  parameters: readonly Parameter[],
  place: Parameter['in'],
): Record<string, unknown> =>
  Object.fromEntries(
    parameters
      .filter((one) => one.in === place && (one.required || drawing.chance.happens(0.6)))
      .map(({ name, schema }) => [name, validValue(drawing, schema, name)]),
  )

/** Encoded as a browser would; half a character has no such form and goes as the bytes that it would be. */
const encoded = (value: unknown): string => {
  const text = typeof value === 'string' ? value : jsonOf(value)
  return text.isWellFormed() ? encodeURIComponent(text) : '%ED%A0%80'
}

const filled = (path: string, params: unknown): string =>
  path.replace(/\{(\w+)\}/g, (_, name: string) =>
    encoded(params !== null && typeof params === 'object' ? (Reflect.get(params, name) ?? '') : params),
  )

const queryText = (chance: Chance, query: unknown): string => {
  if (query === null || typeof query !== 'object') return `?${encoded(query)}`
  const pairs = Object.entries(query).map(([name, value]) => `${encoded(name)}=${encoded(value)}`)
  if (pairs.length > 0 && chance.happens(0.02)) pairs.push(pairs[0] ?? '')
  return pairs.length === 0 ? '' : `?${pairs.join('&')}`
}

const hostilePath = (chance: Chance, path: string): string =>
  chance.pick([
    `${path}/`,
    `/${path}`,
    `${path}/%00`,
    `${path}%`,
    `${path}%ff%fe`,
    `${path}/..%2f..%2f..%2fetc%2fpasswd`,
    `${path}/../../${path}`,
    `${path}/${'a'.repeat(3_000)}`,
    `${path}?${'q=a&'.repeat(3_000)}`,
    `${path}/${'a/'.repeat(9_000)}`,
    `${path}?q=%00&q[]=1&q[a]=2&__proto__=1`,
    path.replace('/api/', '/API/'),
    '/%00',
    '/assets/',
    `/assets/${'a'.repeat(5_000)}`,
    `/assets/${encoded(chance.pick(hostileTexts)).slice(0, 6_000)}`,
    '/desk/%00',
    `/bay/${'b'.repeat(8_000)}`,
    '/*',
    '//',
  ])

const headersOf = (
  drawing: Drawing,
  parameters: readonly Parameter[],
  params: unknown,
): Record<string, string> => {
  const { chance, known, path } = drawing
  const versions = Object.values(params ?? {}).flatMap(
    (id) => (typeof id === 'string' && known.versionOf(id)) || [],
  )
  return Object.fromEntries(
    parameters
      .filter((one) => one.in === 'header')
      .map(({ name }): [string, string] =>
        name === 'If-Match'
          ? [name, `"${versions[0] ?? known.one(chance, 'version', path) ?? 1}"`]
          : [name, newIdFrom(chance)],
      ),
  )
}

const hostileHeader = (chance: Chance): Record<string, string> =>
  chance.pick<Record<string, string>>([
    { 'if-match': '*' },
    { 'if-match': '"99999999999999999999"' },
    { 'if-match': 'W/"1"' },
    { 'idempotency-key': 'k'.repeat(5_000) },
    { 'idempotency-key': '' },
    { 'idempotency-key': '\u00ff\u0080' },
    { 'content-type': 'text/plain' },
    { 'content-type': 'application/json; charset=utf-16' },
    { 'content-type': 'multipart/form-data; boundary=x' },
    { 'content-type': ';;;' },
    { 'content-encoding': 'gzip' },
    { 'sec-fetch-site': 'cross-site' },
    { 'sec-fetch-site': 'same-origin', origin: 'https://elsewhere.example' },
    { 'bayledger-face': 'bay' },
    { 'bayledger-face': 'x'.repeat(2_000) },
    { 'accept-encoding': 'gzip;q=0, *;q=0.5' },
    { 'x-forwarded-for': '127.0.0.1, \u00ff' },
    { range: 'bytes=0-,0-,0-' },
    { range: 'bytes=99999999-' },
    { 'if-unmodified-since': 'Thu, 01 Jan 1970 00:00:00 GMT' },
    { cookie: `bayledger-desk=${'a'.repeat(4_000)}; bayledger-bay=%00; bayledger-device=%E0%A4%A` },
    { 'x-long': 'h'.repeat(20_000) },
    { expect: '100-continue' },
  ])

/** OpenAPI leaves evidence open; orders hold some. */
const evidenceHas = { must: ['units', 'vehicle', 'wheels'], may: null }

type Sent = { readonly type: string; readonly bytes: Uint8Array }

const bodyOf = (
  drawing: Drawing,
  operation: Operation,
  file: Uint8Array | undefined,
  spoil: (value: unknown) => unknown,
): Sent | null => {
  const { chance } = drawing
  if (operation.bytes !== null && (operation.body === null || chance.happens(0.5)))
    return { type: operation.bytes, bytes: hostileBytes(chance, file) }
  if (operation.body === null) return null
  const valid =
    operation.operationId === 'appendEntries' && chance.happens(0.85)
      ? entriesBody(drawing)
      : ((operation.operationId === 'computeDiagnosis' && chance.happens(0.85)
          ? drawing.known.object(chance, evidenceHas)
          : undefined) ?? validValue(drawing, operation.body, 'body'))
  return { type: 'application/json', bytes: Buffer.from(jsonOf(spoil(valid))) }
}

const hostileBytes = (chance: Chance, file: Uint8Array | undefined): Uint8Array => {
  const text = Buffer.from(file ?? '%PDF-1.7 (report T-2601-R1)\n%%EOF')
  const lines = text.toString().split('\n')
  return chance.pick<() => Uint8Array>([
    () => text,
    () => text,
    () => Buffer.from(text.toString().replaceAll(',', ';')),
    () => Buffer.from([...lines, lines.at(-2) ?? '', 'a,"b', '\u0000,\u202e'].join('\r\n')),
    () => Buffer.from(`${lines[0]}\n${chance.pick(hostileTexts)},${chance.pick(hostileTexts)}\n`),
    () => Buffer.from(`${lines[0]}\n${'"\n'.repeat(3_000)}`),
    () => Buffer.from([0xff, 0xfe, 0x00, 0xd8, 0x00]),
    () => text.subarray(0, chance.below(text.length + 1)),
    () => Buffer.alloc(0),
    () => Buffer.alloc(300_000, chance.below(256)),
  ])()
}

type Wire = {
  readonly method?: string
  readonly headers?: Readonly<Record<string, string>>
  readonly body: Uint8Array | null
}

const hostileWire = (chance: Chance, body: Uint8Array | null): Wire =>
  chance.pick<() => Wire>([
    () => ({ body: body?.subarray(0, Math.floor(body.length / 2)) ?? null }),
    () => ({ body: Buffer.concat([Buffer.from('\ufeff'), body ?? Buffer.from('{}')]) }),
    () => ({ body: Buffer.concat([body ?? Buffer.from('{}'), Buffer.from([0xff, 0xc0, 0x80])]) }),
    () => ({ body: Buffer.from('null') }),
    () => ({ body: Buffer.alloc(0), headers: { 'content-type': 'application/json' } }),
    () => ({ body: Buffer.alloc(1_500_000, 0x20) }),
    () => ({ method: 'PATCH', body }),
    () => ({ method: 'DELETE', body: null }),
    () => ({ method: 'HEAD', body: null }),
    () => ({ method: 'OPTIONS', body: null }),
    () => ({ method: 'TRACE', body: null }),
    () => ({ method: 'PUT', body: body ?? Buffer.from('{}') }),
  ])()
