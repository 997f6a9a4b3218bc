/** A problem reply as the server sends it (RFC 9457, with our `code`, `fields` and `requestId`). */
export type ProblemBody = {
  title: string
  status: number
  code: string
  detail?: string | undefined
  fields?: readonly { field: string; says: string }[] | undefined
  requestId?: string | undefined
}

/** What `call` throws when the server answers with a problem, or cannot be reached (then the status is 0). */
export class Problem extends Error {
  readonly body: ProblemBody

  constructor(body: ProblemBody, cause?: unknown) {
    super(body.title, { cause })
    this.name = 'Problem'
    this.body = body
  }
}

/** Whether a thrown thing is a problem, of the given code if one is given. */
export const isProblem = (thrown: unknown, code?: string): thrown is Problem =>
  thrown instanceof Problem && (code === undefined || thrown.body.code === code)

/** Words for anything that was thrown, for a person. */
export function wordsOf(thrown: unknown): Omit<ProblemBody, 'status' | 'code'> {
  if (isProblem(thrown)) return thrown.body
  if (isMissingPage(thrown)) {
    return { title: 'There is no such page.', detail: 'Check the address, or go back.' }
  }
  return {
    title: 'This page failed to show.',
    detail:
      'What was recorded before is kept. Load the page again; if it fails again, tell the shop’s owner.',
  }
}

/** React Router throws a plain response-like value for an address that no route matches. */
const isMissingPage = (thrown: unknown): boolean =>
  typeof thrown === 'object' && thrown !== null && 'status' in thrown && thrown.status === 404
