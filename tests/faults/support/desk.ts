import { people } from '../../../prisma/seeds/demo/people.ts'

type DeskRequest = {
  readonly method: string
  readonly path: string
  readonly body?: object | undefined
  /** The version of the record that was read. */
  readonly version?: number | undefined
  /** Longer than this it is not waited for; rejects then. */
  readonly patienceMs?: number
}

/** Sends a request as a browser at the desk does; gives whatever is answered. */
export const askDesk = (
  port: number,
  cookie: string,
  { method, path, body, version, patienceMs }: DeskRequest,
): Promise<Response> =>
  fetch(`http://localhost:${port}${path}`, {
    method,
    headers: {
      'sec-fetch-site': 'same-origin',
      'bayledger-face': 'desk',
      cookie,
      ...(body === undefined ? {} : { 'content-type': 'application/json' }),
      ...(version === undefined ? {} : { 'if-match': `"${version}"` }),
    },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    ...(patienceMs === undefined ? {} : { signal: AbortSignal.timeout(patienceMs) }),
  })

/** The cookie of the demo's owner, who signs in at the desk. Rejects where the service does not let them in. */
export const signInAtDesk = async (
  port: number,
  { patienceMs }: Pick<DeskRequest, 'patienceMs'> = {},
): Promise<string> => {
  const { signInName: name, password } = people.marguerite
  const reply = await askDesk(port, '', {
    ...{ method: 'POST', path: '/api/sessions/desk', body: { name, password } },
    ...(patienceMs === undefined ? {} : { patienceMs }),
  })
  const text = await reply.text()
  if (reply.status !== 201) throw new TypeError(`nobody can sign in: ${reply.status} ${text.slice(0, 400)}`)
  return reply.headers
    .getSetCookie()
    .map((one) => one.split(';')[0])
    .join('; ')
}

/** Asks for something and gets the parsed answer; rejects where it is refused. */
export type Desk = (method: string, path: string, body?: object, version?: number) => Promise<unknown>

/** A desk at a service: the owner signs in when it first asks. */
export const openDesk = (port: number): Desk => {
  let session: Promise<string> | null = null
  return async (method, path, body, version) => {
    session ??= signInAtDesk(port)
    const reply = await askDesk(port, await session, { method, path, body, version })
    const text = await reply.text()
    if (!reply.ok) throw new Error(`${method} ${path}: ${reply.status} ${text}`)
    return text === '' ? null : JSON.parse(text)
  }
}
