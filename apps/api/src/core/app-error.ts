import { type ErrorCode, errorStatuses } from '@bayledger/contract/errors'
import type { FieldProblem, Problem } from '@bayledger/contract/problem'
import { english } from '@bayledger/wording/en/english'
import { problemDetail, type SaidProblem } from '@bayledger/wording/problems'

type Extras = Partial<
  Pick<Problem, 'current' | 'sent' | 'reason' | 'retryAfterSeconds'> & {
    readonly fields: FieldProblem[]
    readonly cause: unknown
  }
>

/** The one error that is thrown on purpose: a code and what it is about. It becomes a problem reply, worded at the edge. */
export class AppError extends Error {
  readonly code: ErrorCode
  readonly said: SaidProblem
  readonly extras: Omit<Extras, 'cause'>

  constructor(said: SaidProblem, { cause, ...extras }: Extras = {}) {
    super(said.code, { cause })
    this.name = 'AppError'
    this.code = said.code
    this.said = said
    this.extras = extras
  }
}

export const problemOf = ({ code, said, extras }: AppError, requestId: string): Problem => ({
  type: `/docs/errors#${code}`,
  title: english.problems[code].title,
  status: errorStatuses[code],
  code,
  detail: problemDetail(english.problems, said),
  requestId,
  ...extras,
})
