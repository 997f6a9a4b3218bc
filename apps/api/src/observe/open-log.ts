import pino, { type DestinationStream, type Logger } from 'pino'

/**
 * The service's log: one JSON object a line, to standard output unless `to` says otherwise. A fault is written with its place in the
 * program and, unless the words may repeat what somebody typed, with its words.
 */
export const openLog = (level: string, to?: DestinationStream): Logger => {
  const options = { level, redact: ['req.headers', 'headers'], serializers: { err: faultForLog } }
  return to ? pino(options, to) : pino(options)
}

type LoggedFault = {
  readonly type: string
  readonly message: string
  readonly code?: string
  readonly table?: string
  readonly constraint?: string
  readonly at?: readonly string[]
  readonly cause?: LoggedFault
}

/** A cause has a cause, but seldom more of them. */
const mostCauses = 5

const faultForLog = (error: unknown, depth = 0): LoggedFault => {
  if (!(error instanceof Error)) return { type: typeof error, message: withheld }
  const { code, table, constraint } = error as { code?: unknown; table?: unknown; constraint?: unknown }
  return {
    type: error.name,
    message: repeatsValues(error) ? withheld : error.message,
    ...(typeof code === 'string' || typeof code === 'number' ? { code: String(code) } : {}),
    ...(typeof table === 'string' ? { table } : {}),
    ...(typeof constraint === 'string' ? { constraint } : {}),
    ...(error.stack ? { at: framesOf(error.stack) } : {}),
    ...(error.cause !== undefined && depth < mostCauses
      ? { cause: faultForLog(error.cause, depth + 1) }
      : {}),
  }
}

const withheld = 'its words are left out, because they may repeat what somebody typed'

/**
 * Whether the words of an error quote values: the database's and its client's do ("Failing row contains (…)"), a mail server's
 * (the address that it refused), and those of a text that is no JSON.
 */
const repeatsValues = (error: Error): boolean =>
  error instanceof SyntaxError ||
  'severity' in error ||
  'responseCode' in error ||
  /^(Prisma|DriverAdapter|Zod|\$Zod)/.test(error.name)

/** The stack without the message that it begins with. */
const framesOf = (stack: string): string[] =>
  stack
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => /^at .+:\d+:\d+\)?$/.test(line))
