import type { ErrorCode } from '@bayledger/contract/errors'
import type { Problem } from '@bayledger/contract/problem'
import { screens } from '@bayledger/wording/en/screens'

/**
 * A problem as this page knows it: the server's (RFC 9457), that the server could not be reached, or that this device
 * could not keep something (status 0 both).
 */
export type ProblemBody = Omit<Problem, 'code' | 'type' | 'requestId'> & {
  code:
    | ErrorCode
    | 'UNREACHABLE'
    | 'REPLY_UNREADABLE'
    | 'TABLET_FULL'
    | 'TABLET_SHUT'
    | 'PIN_NOT_KEPT'
    | 'ROAD_UNKNOWN'
    | 'PASSKEY_NOT_USED'
  requestId?: string | undefined
}

/** What `call` throws. `body` says what is wrong in words for a person. */
export class CallProblem extends Error {
  readonly body: ProblemBody

  constructor(body: ProblemBody, cause?: unknown) {
    super(body.title, { cause })
    this.name = 'CallProblem'
    this.body = body
  }
}

/** Whether a thrown thing is a problem, of the given code if one is given. */
export const isCallProblem = (thrown: unknown, code?: ProblemBody['code']): thrown is CallProblem =>
  thrown instanceof CallProblem && (code === undefined || thrown.body.code === code)

/** The words of anything that was thrown, for a person. */
export function problemText(thrown: unknown): Pick<ProblemBody, 'title' | 'detail' | 'fields' | 'requestId'> {
  return isCallProblem(thrown) ? thrown.body : screens.failedToShow
}
