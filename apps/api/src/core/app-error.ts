import { type ErrorCode, errors } from '@bayledger/contract/errors'
import type { FieldProblem, Problem } from '@bayledger/contract/problem'

type Extras = Partial<
  Pick<Problem, 'current' | 'sent' | 'reason' | 'retryAfterSeconds'> & {
    readonly fields: FieldProblem[]
    readonly cause: unknown
  }
>

/**
 * The one error that is thrown on purpose; it becomes a problem reply. `detail` says what is wrong here,
 * what is allowed and what to do.
 */
export class AppError extends Error {
  readonly code: ErrorCode
  readonly detail: string
  readonly extras: Omit<Extras, 'cause'>

  constructor(code: ErrorCode, detail: string, { cause, ...extras }: Extras = {}) {
    super(code, { cause })
    this.name = 'AppError'
    this.code = code
    this.detail = detail
    this.extras = extras
  }
}

export const problemOf = (error: AppError, requestId: string): Problem => ({
  type: `/docs/errors#${error.code}`,
  title: errors[error.code].title,
  status: errors[error.code].status,
  code: error.code,
  detail: error.detail,
  requestId,
  ...error.extras,
})
